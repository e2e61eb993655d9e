// SPDX-License-Identifier: EPL-2.0
package wainscribe.report.view;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;

import wainscribe.fabrication.CutList;
import wainscribe.fabrication.Piece;
import wainscribe.fabrication.PieceEnd;
import wainscribe.fabrication.Removal;
import wainscribe.fabrication.SawSetting;

/** Makes the rows of pieces to cut. */
record PieceRows(Wording wording, UnaryOperator<String> profileName) {

	/** What pieces must share to be cut alike. */
	private record Cut(String profile, String length, String start, String end, String notes) {
	}

	List<PieceRow> of(CutList list) {
		Map<Cut, List<String>> alike = new LinkedHashMap<>();
		for (Piece piece : list.pieces()) {
			Cut cut = new Cut(profileName.apply(piece.profile()), wording.mark(piece.longPoint()), end(piece.start()),
					end(piece.end()), String.join("; ", piece.notes()));
			alike.computeIfAbsent(cut, key -> new ArrayList<>()).add(piece.label());
		}
		return alike.entrySet().stream().map(entry -> row(entry.getKey(), entry.getValue())).toList();
	}

	private static PieceRow row(Cut cut, List<String> labels) {
		return new PieceRow(labels.size(), cut.length(), cut.profile(), cut.start(), cut.end(), PieceNames.together(labels), cut.notes());
	}

	/** Writes what an end meets, how the saw is set for it on its scale, and what the rounding leaves open. */
	static String end(PieceEnd end) {
		StringBuilder text = new StringBuilder(end.joint().word());
		SawSetting setting = end.setting();
		if (setting.turn().signum() != 0) {
			text.append(' ').append(Wording.number(setting.turn())).append('\u00b0');
		}
		if (setting.tilt().signum() != 0) {
			text.append(", tilt ").append(Wording.number(setting.tilt())).append('\u00b0');
		}
		if (!end.longSide().word().isEmpty()) {
			text.append(", long at ").append(end.longSide().word());
		}
		if (setting.opening().signum() != 0) {
			text.append(", open up to ").append(Wording.number(setting.opening())).append(" mm");
		}
		return text.toString();
	}

	List<String> blocks(CutList list) {
		return list.blocks().stream().map(block -> Wording.sentence(block.use().word()) + " " + wording.mark(block.width()) + " \u00d7 "
				+ wording.mark(block.thickness()) + ", " + wording.mark(block.height()) + " high: " + block.where()).toList();
	}

	List<String> removals(CutList list) {
		return list.removals().stream().map(this::removal).toList();
	}

	private String removal(Removal removal) {
		String name = removal.name().isBlank() ? "" : " (" + removal.name() + ")";
		return "Wall " + removal.wall() + ": " + Wording.words(removal.type()) + name + ", " + wording.length(removal.length());
	}
}
