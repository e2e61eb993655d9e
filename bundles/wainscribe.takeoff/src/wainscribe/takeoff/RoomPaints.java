// SPDX-License-Identifier: EPL-2.0
package wainscribe.takeoff;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import wainscribe.model.Home;
import wainscribe.model.Paint;
import wainscribe.model.Room;
import wainscribe.model.Surface;

/** The paints that hold in a room: its own, and the home's for surfaces for which it has none. */
record RoomPaints(List<Paint> all) {

	static RoomPaints of(Home home, Room room) {
		List<Paint> paints = new ArrayList<>(room.getPaints());
		Set<Surface> own = EnumSet.noneOf(Surface.class);
		room.getPaints().forEach(paint -> own.add(surface(paint)));
		home.getPaints().stream().filter(paint -> !own.contains(surface(paint))).forEach(paints::add);
		return new RoomPaints(List.copyOf(paints));
	}

	/** Returns the surface of a paint; walls where none was said. */
	static Surface surface(Paint paint) {
		return paint.getZone() == null || paint.getZone().getSurface() == null ? Surface.WALLS : paint.getZone().getSurface();
	}

	/** Tells whether a paint goes on a wall; without named walls it goes on all. */
	static boolean covers(Paint paint, String wall) {
		return paint.getZone() == null || paint.getZone().getWalls().isEmpty() || paint.getZone().getWalls().contains(wall);
	}

	boolean has(Surface surface, String wall) {
		return find(surface, wall).isPresent();
	}

	/**
	 * Returns the paint that new moulding on a wall takes.
	 *
	 * @param wall  name of the wall
	 * @param above whether it sits at the ceiling
	 */
	Optional<Paint> ofMoulding(String wall, boolean above) {
		return find(Surface.TRIM, wall).or(() -> find(above ? Surface.UPPER : Surface.LOWER, wall))
				.or(() -> find(Surface.WALLS, wall)).or(() -> find(above ? Surface.LOWER : Surface.UPPER, wall));
	}

	private Optional<Paint> find(Surface surface, String wall) {
		return all.stream().filter(paint -> surface(paint) == surface && covers(paint, wall)).findFirst();
	}
}
