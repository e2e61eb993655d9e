// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.paint;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

import wainscribe.model.Paint;
import wainscribe.model.Surface;
import wainscribe.model.SurfaceZone;
import wainscribe.rules.RuleContext;

/** The paints that hold in a room: its own, and the home's for surfaces it has none of its own for. */
final class RoomPaints {

	private static final Set<Surface> WALL = EnumSet.of(Surface.WALLS, Surface.LOWER, Surface.UPPER);

	private RoomPaints() {
	}

	static List<Paint> of(RuleContext context) {
		List<Paint> paints = new ArrayList<>(context.room().getPaints());
		Set<Surface> own = EnumSet.noneOf(Surface.class);
		paints.forEach(paint -> own.add(surface(paint)));
		context.home().getPaints().stream().filter(paint -> !own.contains(surface(paint))).forEach(paints::add);
		return paints;
	}

	/** Returns what a paint goes on; walls if that was not said. */
	static Surface surface(Paint paint) {
		return paint.getZone() == null ? Surface.WALLS : paint.getZone().getSurface();
	}

	/** Tells whether a coating that is there lies under one that is to come. */
	static boolean meet(SurfaceZone there, SurfaceZone toCome) {
		if (there == null || toCome == null) {
			return false;
		}
		boolean surface = there.getSurface() == toCome.getSurface()
				|| WALL.contains(there.getSurface()) && WALL.contains(toCome.getSurface())
						&& (there.getSurface() == Surface.WALLS || toCome.getSurface() == Surface.WALLS);
		boolean walls = there.getWalls().isEmpty() || toCome.getWalls().isEmpty()
				|| there.getWalls().stream().anyMatch(toCome.getWalls()::contains);
		return surface && walls;
	}
}
