// SPDX-License-Identifier: EPL-2.0
package wainscribe.report.view;

import java.util.List;
import java.util.function.UnaryOperator;

import wainscribe.fabrication.CutList;
import wainscribe.fabrication.Piece;
import wainscribe.fabrication.PieceEnd;
import wainscribe.fabrication.Removal;

/** Makes the rows of pieces to cut. */
record PieceRows(Wording wording, UnaryOperator<String> profileName) {

	List<PieceRow> of(CutList list) {
		return list.pieces().stream().map(this::row).toList();
	}

	private PieceRow row(Piece piece) {
		return new PieceRow(piece.label(), profileName.apply(piece.profile()), wording.mark(piece.longPoint()),
				end(piece.start()), end(piece.end()), piece.where(), String.join("; ", piece.notes()));
	}

	private static String end(PieceEnd end) {
		StringBuilder text = new StringBuilder(end.joint().word());
		if (end.turn().signum() != 0) {
			text.append(' ').append(Wording.number(end.turn())).append('\u00b0');
		}
		if (end.tilt().signum() != 0) {
			text.append(", tilt ").append(Wording.number(end.tilt())).append('\u00b0');
		}
		if (!end.longSide().word().isEmpty()) {
			text.append(", long at ").append(end.longSide().word());
		}
		return text.toString();
	}

	List<String> removals(CutList list) {
		return list.removals().stream().map(this::removal).toList();
	}

	private String removal(Removal removal) {
		String name = removal.name().isBlank() ? "" : " (" + removal.name() + ")";
		return "Wall " + removal.wall() + ": " + Wording.words(removal.type()) + name + ", " + wording.length(removal.length());
	}
}
