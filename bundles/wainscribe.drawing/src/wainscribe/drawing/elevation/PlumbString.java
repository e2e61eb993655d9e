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

/** Draws one plumb dimension string: running heights from the finished floor, left or right of the wall. */
final class PlumbString {

	private static final double LEADER = 2.4;
	private static final double BESIDE_LEADER = 0.6;

	private final Sheet sheet;
	private final double x;
	private final double side;
	private final double size;

	/**
	 * Creates a string.
	 *
	 * @param sheet where to draw
	 * @param x     place of the dimension line
	 * @param right whether the texts stand right of it, else left
	 */
	PlumbString(Sheet sheet, double x, boolean right) {
		this.sheet = sheet;
		this.x = x;
		side = right ? 1 : -1;
		size = sheet.paper(LevelString.TEXT_SIZE);
	}

	/**
	 * Draws the heights.
	 *
	 * @param marks in their order
	 * @param least no text reaches below this
	 */
	void running(List<Mark> marks, double least) {
		double room = size * (Label.CAP_HEIGHT + Label.TAIL) + sheet.paper(LevelString.CLEAR);
		List<Double> middles = LabelSpacing.middles(
				marks.stream().map(mark -> new LabelSpacing.Slot(mark.at().approximateMillimetres(), room)).toList(), least);
		for (int i = 0; i < marks.size(); i++) {
			sheet.add(LayerName.DIMENSION, dimension(marks.get(i), i == 0 ? marks.get(0) : marks.get(i - 1), middles.get(i)));
		}
	}

	private Dimension dimension(Mark mark, Mark before, double middle) {
		double y = mark.at().approximateMillimetres();
		double leader = sheet.paper(LEADER) * side;
		Point at = new Point(x + leader + sheet.paper(BESIDE_LEADER) * side,
				middle - size * (Label.CAP_HEIGHT - Label.TAIL) / 2);
		Label label = sheet.label(mark.subject(), Role.DIMENSION_TEXT, Mark.text(mark.at(), sheet.options().unit()), at,
				LevelString.TEXT_SIZE, side > 0 ? Label.Anchor.START : Label.Anchor.END, false);
		double half = sheet.paper(LevelString.TICK) / 2;
		List<Path> lines = new ArrayList<>();
		lines.add(line(new Point(x, before.at().approximateMillimetres()), new Point(x, y)));
		lines.add(line(new Point(x - half, y - half), new Point(x + half, y + half)));
		lines.add(Path.polyline(Subject.NONE, Role.DIMENSION_LINE,
				List.of(new Point(x, y), new Point(x + leader / 3, y), new Point(x + leader, middle))));
		return new Dimension(mark.subject(), Dimension.Axis.PLUMB, Length.ZERO, mark.at(), label, lines);
	}

	private static Path line(Point from, Point to) {
		return Path.line(Subject.NONE, Role.DIMENSION_LINE, from, to);
	}
}
