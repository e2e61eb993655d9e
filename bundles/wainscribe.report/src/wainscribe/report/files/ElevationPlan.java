// SPDX-License-Identifier: EPL-2.0
package wainscribe.report.files;

import java.util.ArrayList;
import java.util.List;

import wainscribe.model.Wall;
import wainscribe.model.storage.FileNames;
import wainscribe.report.PackContent;
import wainscribe.report.RoomContent;

/**
 * An elevation of a pack and the name of its files.
 *
 * @param room     its room
 * @param wall     its wall
 * @param fileName without folder and extension; unique in the pack whatever the case of letters, and safe on every system
 */
public record ElevationPlan(RoomContent room, Wall wall, String fileName) {

	private static final String FALLBACK = "wall"; //$NON-NLS-1$

	/** Plans the elevations of all walls, room by room in walking order. */
	public static List<ElevationPlan> of(PackContent content) {
		List<ElevationPlan> plans = new ArrayList<>();
		List<String> taken = new ArrayList<>();
		for (RoomContent room : content.rooms()) {
			for (Wall wall : room.design().room().getWalls()) {
				String name = FileNames.derive(room.name() + ' ' + (wall.getName() == null ? "" : wall.getName()), FALLBACK, //$NON-NLS-1$
						taken);
				taken.add(name);
				plans.add(new ElevationPlan(room, wall, name));
			}
		}
		return plans;
	}
}
