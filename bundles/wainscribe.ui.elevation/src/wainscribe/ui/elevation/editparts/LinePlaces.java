// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.editparts;

import java.util.List;

import org.eclipse.draw2d.geometry.Rectangle;

import wainscribe.layout.axes.AxisCheck;
import wainscribe.layout.axes.WallAxis;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.ui.elevation.table.DrawingTable;
import wainscribe.ui.elevation.table.Projection;

/** The pixels that lines laid on a wall take. */
final class LinePlaces {

	/** Size of the word at an axis. */
	static final double NOTE = 10.5;

	private static final int BEYOND = 14;
	private static final int UNDER_CEILING = 3;
	private static final int ROOM_FOR_NOTE = 96;
	private static final int ROOM_FOR_WORDS = 120;
	private static final int ROW = 22;
	private static final int ROWS = 3;

	private final Projection place;
	private final Rectangle wall;
	private final Rectangle extent;
	private final List<WallAxis> axes;

	LinePlaces(DrawingTable table, Wall wall) {
		this.place = table.placeOf(wall);
		this.wall = place.pixels(table.drawingOf(wall).wall());
		this.extent = place.pixels(table.drawingOf(wall).extent());
		this.axes = AxisCheck.axes(wall);
	}

	Rectangle plumb(Length at, int reach) {
		return new Rectangle(place.x(at) - reach, wall.y - BEYOND, 2 * reach + 1, wall.height + 2 * BEYOND).intersect(extent);
	}

	Rectangle level(Length at, int reach) {
		return new Rectangle(wall.x - BEYOND, place.y(at) - reach, wall.width + 2 * BEYOND, 2 * reach + 1).intersect(extent);
	}

	/** On a wall drawn small words would hide more than they tell. */
	String noteOr(String note) {
		return wall.height < ROOM_FOR_WORDS ? "" : note; //$NON-NLS-1$
	}

	/** Words of axes that stand close together are written under each other. */
	int noteRow(Length at) {
		int row = 0;
		Length before = null;
		for (WallAxis axis : axes) {
			row = before != null && place.x(axis.at()) - place.x(before) < ROOM_FOR_NOTE ? (row + 1) % ROWS : 0;
			before = axis.at();
			if (!before.isLessThan(at)) {
				break;
			}
		}
		return wall.y + UNDER_CEILING + row * ROW;
	}
}
