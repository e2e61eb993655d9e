// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.table;

import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

import org.eclipse.draw2d.geometry.Rectangle;

import wainscribe.drawing.Bounds;
import wainscribe.drawing.Drawing;
import wainscribe.model.Wall;

/**
 * The walls of a room side by side in walking order, all on one floor line.
 * <p>
 * Room for dimensions is kept in whole steps, so that walls stay where they are while small things change.
 */
final class StripArrangement {

	private static final int EDGE = 28;
	private static final int BETWEEN = 36;
	private static final int STEP = 24;

	private final Map<Wall, Projection> places = new IdentityHashMap<>();
	private Rectangle area = new Rectangle();

	private StripArrangement() {
	}

	/**
	 * Arranges walls.
	 *
	 * @param walls    in walking order
	 * @param drawings their drawings
	 * @param scale    pixels for a millimetre
	 */
	static StripArrangement of(List<Wall> walls, Function<Wall, Drawing> drawings, double scale) {
		StripArrangement arrangement = new StripArrangement();
		double above = walls.stream().mapToDouble(wall -> drawings.apply(wall).extent().y1() * scale).max().orElse(0);
		double floor = EDGE + stepped(above);
		double x = EDGE;
		for (Wall wall : walls) {
			Bounds extent = drawings.apply(wall).extent();
			double left = x + stepped(-extent.x0() * scale);
			arrangement.places.put(wall, new Projection(scale, left, floor));
			double length = drawings.apply(wall).wall().x1();
			x = left + length * scale + stepped((extent.x1() - length) * scale) + BETWEEN;
		}
		double below = walls.stream().mapToDouble(wall -> -drawings.apply(wall).extent().y0() * scale).max().orElse(0);
		arrangement.area = new Rectangle(0, 0, (int) Math.ceil(x - BETWEEN + EDGE), (int) Math.ceil(floor + stepped(below)));
		return arrangement;
	}

	Projection of(Wall wall) {
		return places.get(wall);
	}

	/** Returns the pixels that the walls with their writing and the room round them take. */
	Rectangle area() {
		return area.getCopy();
	}

	private static double stepped(double pixels) {
		return Math.ceil(Math.max(0, pixels) / STEP) * STEP;
	}
}
