// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile.feedback;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

import org.eclipse.draw2d.IFigure;
import org.eclipse.draw2d.geometry.Point;

import wainscribe.profile.section.SectionFault;
import wainscribe.profile.section.Spot;
import wainscribe.ui.drafting.appearance.Appearance;
import wainscribe.ui.drafting.figures.NoteFigure;
import wainscribe.ui.profile.desk.ProfileDesk;
import wainscribe.ui.profile.figures.FaultFigure;
import wainscribe.ui.profile.words.SectionNumbers;

/** Rings the place where the section that is drawn now is wrong, and says there what it is. */
public final class FaultMark {

	private final ProfileDesk desk;
	private final IFigure layer;
	private FaultFigure ring;
	private NoteFigure note;

	/**
	 * Creates a mark that is not seen yet.
	 *
	 * @param desk  what is looked at
	 * @param layer takes the mark
	 */
	public FaultMark(ProfileDesk desk, IFigure layer) {
		this.desk = Objects.requireNonNull(desk);
		this.layer = Objects.requireNonNull(layer);
	}

	/** Shows what is wrong now, or nothing. */
	public void show() {
		erase();
		Optional<SectionFault> placed = desk.session().faults().stream().filter(fault -> fault.where().isPresent()).findFirst();
		placed.ifPresent(fault -> mark(fault, fault.where().orElseThrow()));
	}

	/** Removes the mark. */
	public void erase() {
		if (ring != null) {
			layer.remove(ring);
			layer.remove(note);
			ring = null;
			note = null;
		}
	}

	private void mark(SectionFault fault, Spot spot) {
		Point middle = desk.plane().pixel(spot);
		ring = new FaultFigure(Appearance.colour(desk.colours().guide()));
		ring.placeRound(middle);
		note = new NoteFigure(desk.letters(), Appearance.colour(desk.colours().guide()),
				Appearance.colour(desk.colours().drawing().ground()));
		layer.add(ring);
		layer.add(note);
		note.setLines(List.of(SectionNumbers.sentence(fault)));
		note.placeBeside(middle, DeskNotes.seen(layer));
	}
}
