// SPDX-License-Identifier: EPL-2.0
package wainscribe.report.pdf;

import java.io.IOException;
import java.util.List;

import wainscribe.drawing.Style;
import wainscribe.drawing.Tone;
import wainscribe.report.view.ElevationView;
import wainscribe.report.view.PaintView;
import wainscribe.report.view.QuantityRow;
import wainscribe.report.view.RoomView;

/** Prints the words and schedules of a room. */
final class RoomPages {

	private static final double SWATCH = 11;

	private final PageFlow flow;

	RoomPages(PageFlow flow) {
		this.flow = flow;
	}

	/** Prints what was measured and is proposed, paints and findings. */
	void summary(RoomView room) throws IOException {
		flow.newPage();
		flow.heading(room.name(), 8.5, Ink.TEXT);
		flow.drop(4);
		flow.heading("Measured", 5, Ink.TEXT);
		new Cover(flow).facts(room.measured());
		flow.space(6);
		flow.heading("Proposed", 5, Ink.TEXT);
		new Cover(flow).facts(room.proposed());
		sentences("What stays plain", room.open());
		for (ElevationView wall : room.elevations()) {
			sentences("Why wall " + wall.name() + " is divided so", wall.reasons());
		}
		if (!room.paints().isEmpty()) {
			flow.space(6);
			flow.heading("Paints", 5, Ink.TEXT);
			for (PaintView paint : room.paints()) {
				paint(paint);
			}
			flow.paragraph("Printed colours are a guide. Decide by a brushed-out sample on the wall, seen by day and by lamp.",
					Ink.SMALL, Ink.SOFT);
		}
		if (!room.findings().isEmpty()) {
			flow.space(6);
			flow.heading("Open findings in this room", 5, Ink.TEXT);
			new Cover(flow).findings(room.findings());
		}
		sentences("Comes off first", room.removals());
	}

	private void sentences(String title, List<String> sentences) throws IOException {
		if (!sentences.isEmpty()) {
			flow.space(6);
			flow.heading(title, 5, Ink.TEXT);
			for (String sentence : sentences) {
				flow.paragraph(sentence, Ink.BODY, Ink.TEXT);
				flow.drop(1.2);
			}
		}
	}

	private void paint(PaintView paint) throws IOException {
		flow.keep(SWATCH + 3);
		Tone colour = Tone.isHex(paint.colour()) ? Tone.parse(paint.colour()) : Tone.of(0xffffff);
		flow.box(0, 0, SWATCH * 1.6, SWATCH, Style.outlined(colour, Ink.LINE, 0.2));
		double indent = SWATCH * 1.6 + 4;
		flow.put(paint.name(), indent, 3.4, Ink.BODY, Ink.TEXT, true);
		flow.put(paint.surface() + (paint.colour().isEmpty() ? "" : "   " + paint.colour()), indent, 7.4, Ink.SMALL, Ink.TEXT,
				false);
		flow.put(paint.details(), indent, 11, Ink.SMALL, Ink.SOFT, false);
		flow.drop(SWATCH + 3);
	}

	/** Prints set-out, pieces and quantities. */
	void schedules(RoomView room, String unit) throws IOException {
		if (room.elevations().stream().anyMatch(wall -> !wall.marks().isEmpty())) {
			flow.newPage();
			flow.heading(room.name() + ": set-out", 6.5, Ink.TEXT);
			flow.paragraph("Marks in " + unit + " from each wall's left end and the finished floor there; each is rounded once.",
					Ink.SMALL, Ink.SOFT);
			for (ElevationView wall : room.elevations()) {
				setOut(wall);
			}
			sentences("Blocks and sticks to cut for the set-out", room.spacers());
		}
		pieces(room, unit);
		sentences("Corner and plinth blocks", room.blocks());
		shopping(room);
	}

	private void setOut(ElevationView wall) throws IOException {
		if (wall.marks().isEmpty()) {
			return;
		}
		flow.space(5);
		flow.heading("Wall " + wall.name(), 4.6, Ink.TEXT);
		new TablePrinter(flow, List.of(Column.left("Frame or strip", 2), Column.right("Left", 2), Column.right("Right", 2),
				Column.right("Bottom", 2.4), Column.right("Top", 2.4), Column.right("Cut width", 2),
				Column.right("Gap left", 2))).print(wall.marks().stream().map(mark -> List.of(mark.frame(), mark.left(),
						mark.right(), mark.bottom(), mark.top(), mark.cut(), mark.gap())).toList());
	}

	private void pieces(RoomView room, String unit) throws IOException {
		if (room.pieces().isEmpty()) {
			return;
		}
		flow.newPage();
		flow.heading(room.name() + ": pieces to cut", 6.5, Ink.TEXT);
		flow.paragraph("Lengths in " + unit + " from long point to long point; angles are turned from a square cut and rounded to the saw's scale; open: what that leaves at the joint at most.",
				Ink.SMALL, Ink.SOFT);
		new TablePrinter(flow, List.of(Column.right("Count", 1), Column.right("Length", 1.6), Column.left("Moulding", 2.4),
				Column.left("Left or lower end", 2.6), Column.left("Right or upper end", 2.6), Column.left("Pieces", 4)))
						.print(room.pieces().stream().map(piece -> List.of(String.valueOf(piece.count()), piece.longPoint(),
								piece.profile(), piece.start(), piece.end(),
								piece.notes().isEmpty() ? piece.labels() : piece.labels() + ". " + piece.notes())).toList());
	}

	/** Prints what the room takes bought for itself; the formulas stand with the list of all rooms. */
	private void shopping(RoomView room) throws IOException {
		if (!room.quantities().isEmpty()) {
			flow.newPage();
			flow.heading(room.name() + ": quantities, bought for this room alone", 6.5, Ink.TEXT);
			new TablePrinter(flow, List.of(Column.left("What", 5), Column.right("Needed", 2), Column.right("Buy", 2.4),
					Column.right("Price", 1.9))).print(room.quantities().stream()
							.map(row -> List.of(row.item(), row.need(), row.buy(), row.price())).toList());
		}
	}

	/** Prints quantities with their formulas on a new page. */
	void quantities(String title, List<QuantityRow> rows) throws IOException {
		if (rows.isEmpty()) {
			return;
		}
		flow.newPage();
		flow.heading(title, 6.5, Ink.TEXT);
		TablePrinter table = new TablePrinter(flow, List.of(Column.left("What", 3), Column.left("How it was found", 5),
				Column.right("Needed", 2), Column.right("Buy", 2.4), Column.right("Price", 1.9)));
		table.head();
		String group = "";
		for (QuantityRow row : rows) {
			if (!row.group().equals(group)) {
				group = row.group();
				table.group(group);
			}
			table.row(List.of(row.item(), row.formula() + (row.source().isBlank() ? "" : " (" + row.source() + ")"), row.need(),
					row.buy(), row.price()));
		}
	}
}
