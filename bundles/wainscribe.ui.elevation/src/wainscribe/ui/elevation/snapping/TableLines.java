// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.snapping;

import java.util.ArrayList;
import java.util.List;

import wainscribe.commands.ElementWords;
import wainscribe.model.ReferenceLine;
import wainscribe.model.Wall;
import wainscribe.ui.elevation.table.DrawingTable;
import wainscribe.ui.elevation.table.LineKey;

/** The lines of a wall that things on a drawing table are drawn to: those of the wall, and the axes and guides shown on it. */
public final class TableLines {

	private TableLines() {
	}

	/**
	 * Collects them as the room is, whatever is being tried.
	 *
	 * @param table the table
	 * @param wall  a wall on it
	 * @param moved what is being moved and gives no lines, null for nothing
	 */
	public static SnapLines of(DrawingTable table, Wall wall, Object moved) {
		SnapLines lines = SnapLines.of(table.session().design(), wall, moved);
		List<SnapLine> plumb = new ArrayList<>();
		List<SnapLine> level = new ArrayList<>();
		for (LineKey key : LineKey.of(wall, table.overlays())) {
			if (key.line() != moved) {
				(key.isPlumb() ? plumb : level).add(new SnapLine(key.line().getAt(), called(key.line())));
			}
		}
		// of lines equally near the first is taken: what was laid there on purpose
		plumb.addAll(lines.plumb());
		level.addAll(lines.level());
		return new SnapLines(plumb, level);
	}

	private static String called(ReferenceLine line) {
		return line.getName() == null || line.getName().isBlank() ? ElementWords.of(line) : line.getName();
	}
}
