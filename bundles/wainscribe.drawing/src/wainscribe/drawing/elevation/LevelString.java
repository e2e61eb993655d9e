// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing.elevation;

import java.util.ArrayList;
import java.util.List;

import wainscribe.drawing.Dimension;
import wainscribe.drawing.Label;
import wainscribe.drawing.LayerName;
import wainscribe.drawing.Path;
import wainscribe.drawing.Point;
import wainscribe.drawing.Role;
import wainscribe.drawing.Subject;
import wainscribe.model.length.Length;

/** Draws one level dimension string: running marks from the datum, or the distances from mark to mark. */
final class LevelString {

	static final double TEXT_SIZE = 2.5;
	static final double CLEAR = 0.7;
	static final double TICK = 0.9;
	private static final double LEADER = 2.2;
	private static final double BELOW_LEADER = 0.6;

	private final Sheet sheet;
	private final double y;
	private final double size;

	/**
	 * Creates a string.
	 *
	 * @param sheet where to draw
	 * @param y     height of the dimension line
	 */
	LevelString(Sheet sheet, double y) {
		this.sheet = sheet;
		this.y = y;
		size = sheet.paper(TEXT_SIZE);
	}

	/** One text of the string before it has its place. */
	private record Entry(Length from, Length to, Subject subject, String text, double wish, boolean upright,
			double lineFrom) {
	}

	/**
	 * Draws running marks, each measured from the wall's left end.
	 *
	 * @return the lowest height that the string reaches
	 */
	double running(List<Mark> marks) {
		List<Entry> entries = new ArrayList<>();
		double before = 0;
		for (Mark mark : marks) {
			double at = mark.at().approximateMillimetres();
			entries.add(new Entry(Length.ZERO, mark.at(), mark.subject(), text(mark.at()), at, true, before));
			before = at;
		}
		return place(entries);
	}

	/**
	 * Draws the distances from each mark to the next.
	 *
	 * @return the lowest height that the string reaches
	 */
	double chain(List<Mark> marks) {
		List<Entry> entries = new ArrayList<>();
		for (int i = 1; i < marks.size(); i++) {
			Length from = marks.get(i - 1).at();
			Length to = marks.get(i).at();
			String text = text(to.minus(from));
			double room = to.minus(from).approximateMillimetres() - sheet.paper(CLEAR);
			double middle = (from.approximateMillimetres() + to.approximateMillimetres()) / 2;
			entries.add(new Entry(from, to, marks.get(i - 1).subject(), text, middle,
					sheet.metrics().width(text, size) > room, from.approximateMillimetres()));
		}
		return place(entries);
	}

	private double place(List<Entry> entries) {
		List<LabelSpacing.Slot> slots = entries.stream().map(entry -> new LabelSpacing.Slot(entry.wish(), room(entry))).toList();
		List<Double> middles = LabelSpacing.middles(slots, Double.NEGATIVE_INFINITY);
		double lowest = y;
		for (int i = 0; i < entries.size(); i++) {
			Dimension dimension = dimension(entries.get(i), middles.get(i));
			sheet.add(LayerName.DIMENSION, dimension);
			lowest = Math.min(lowest, dimension.label().bounds().y0());
		}
		return lowest;
	}

	private double room(Entry entry) {
		double along = entry.upright() ? size * (Label.CAP_HEIGHT + Label.TAIL) : sheet.metrics().width(entry.text(), size);
		return along + sheet.paper(CLEAR);
	}

	private Dimension dimension(Entry entry, double middle) {
		double top = y - sheet.paper(LEADER + BELOW_LEADER);
		Point at = entry.upright() ? new Point(middle + size * (Label.CAP_HEIGHT - Label.TAIL) / 2, top)
				: new Point(middle, top - size * Label.CAP_HEIGHT);
		Label label = sheet.label(entry.subject(), Role.DIMENSION_TEXT, entry.text(), at, TEXT_SIZE,
				entry.upright() ? Label.Anchor.END : Label.Anchor.MIDDLE, entry.upright());
		double to = entry.to().approximateMillimetres();
		List<Path> lines = new ArrayList<>();
		lines.add(stroke(entry.lineFrom(), y, to, y));
		lines.add(tick(entry.lineFrom()));
		lines.add(tick(to));
		if (entry.upright()) {
			lines.add(Path.polyline(Subject.NONE, Role.DIMENSION_LINE, List.of(new Point(entry.wish(), y),
					new Point(entry.wish(), y - sheet.paper(LEADER) / 3), new Point(middle, y - sheet.paper(LEADER)))));
		}
		return new Dimension(entry.subject(), Dimension.Axis.LEVEL, entry.from(), entry.to(), label, lines);
	}

	private Path tick(double x) {
		double half = sheet.paper(TICK);
		return stroke(x - half / 2, y - half / 2, x + half / 2, y + half / 2);
	}

	private static Path stroke(double x0, double y0, double x1, double y1) {
		return Path.line(Subject.NONE, Role.DIMENSION_LINE, new Point(x0, y0), new Point(x1, y1));
	}

	private String text(Length length) {
		return Mark.text(length, sheet.options().unit());
	}
}
