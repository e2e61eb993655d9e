// SPDX-License-Identifier: EPL-2.0
package wainscribe.fabrication;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.osgi.util.NLS;

import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.model.length.LengthFormat;
import wainscribe.model.length.LengthUnit;

/** Writes what has to be known of a piece beyond its measures. */
record PieceNotes(LengthUnit unit, Optional<Length> longestStock) {

	List<String> of(PieceKind kind, Length longPoint, PieceEnd start, PieceEnd end) {
		List<String> notes = new ArrayList<>();
		longestStock.filter(longPoint::isMoreThan).ifPresent(stock -> {
			String template = kind.isSingle() ? Messages.PieceNotes_LongerThanStock : Messages.PieceNotes_ScarfOnStud;
			notes.add(NLS.bind(template, LengthFormat.asShown(stock, unit)));
		});
		if (start.isBeyondSaw() || end.isBeyondSaw()) {
			notes.add(Messages.PieceNotes_BeyondSaw);
		}
		return notes;
	}

	/** Writes where a piece is scarfed to the next, and how to find the stud if it was not measured. */
	List<String> ofScarf(Wall wall, Length joint, boolean onStud) {
		String at = LengthFormat.asShown(joint, unit);
		if (onStud) {
			return List.of(NLS.bind(Messages.PieceNotes_Scarf, at));
		}
		return List.of(wall.getStudSpacing() == null ? NLS.bind(Messages.PieceNotes_ScarfFindStud, at)
				: NLS.bind(Messages.PieceNotes_ScarfModule, at, LengthFormat.asShown(wall.getStudSpacing(), unit)));
	}
}
