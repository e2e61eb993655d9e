// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing.elevation;

import java.util.ArrayList;
import java.util.List;

/**
 * Moves labels along a line so that none overlaps another, keeps their order, and moves them as little as can be (least
 * sum of squares, by pooling neighbours that push each other).
 */
final class LabelSpacing {

	private LabelSpacing() {
	}

	/**
	 * A label on the line.
	 *
	 * @param wish where its middle would best be; not below that of the label before
	 * @param size room it takes along the line, clearance included
	 */
	record Slot(double wish, double size) {
	}

	/** Neighbours that touch: their labels stand in a row, whose middle is where the mean of their wishes puts it. */
	private static final class Row {
		private int count;
		private double wishes;
		private double size;

		double start() {
			return wishes / count;
		}
	}

	/**
	 * Returns the middles of the labels.
	 *
	 * @param slots in the order of their wishes
	 * @param least no label reaches below this
	 */
	static List<Double> middles(List<Slot> slots, double least) {
		List<Row> rows = new ArrayList<>();
		for (Slot slot : slots) {
			Row row = new Row();
			row.count = 1;
			row.wishes = slot.wish() - slot.size() / 2;
			row.size = slot.size();
			rows.add(row);
			while (rows.size() > 1 && overlap(rows)) {
				join(rows);
			}
		}
		return place(slots, rows, least);
	}

	private static boolean overlap(List<Row> rows) {
		Row before = rows.get(rows.size() - 2);
		return before.start() + before.size > rows.getLast().start();
	}

	/** Each label of the later row wishes that the joint row began so much earlier as the earlier row is long. */
	private static void join(List<Row> rows) {
		Row last = rows.removeLast();
		Row before = rows.getLast();
		before.wishes += last.wishes - last.count * before.size;
		before.count += last.count;
		before.size += last.size;
	}

	private static List<Double> place(List<Slot> slots, List<Row> rows, double least) {
		List<Double> middles = new ArrayList<>();
		double end = least;
		int next = 0;
		for (Row row : rows) {
			double position = Math.max(row.start(), end);
			for (int i = 0; i < row.count; i++) {
				double size = slots.get(next++).size();
				middles.add(position + size / 2);
				position += size;
			}
			end = position;
		}
		return middles;
	}
}
