// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation;

import wainscribe.drawing.elevation.ElevationDrawing;
import wainscribe.ui.drafting.appearance.TableColours;
import wainscribe.ui.drafting.painting.Letters;
import wainscribe.ui.elevation.table.DrawingTable;
import wainscribe.ui.elevation.table.TableZoom;
import wainscribe.ui.session.RoomSession;

/** Puts a drawing table together from the services that are registered. */
final class TableSetup {

	private static final int FIRST_SCALE = 24;

	private TableSetup() {
	}

	/** Lays a room on a table. What is tried during a drag is laid out without advice, which nobody reads meanwhile. */
	static DrawingTable table(RoomSession session, Letters letters, TableColours colours) {
		return new DrawingTable(session, profiles -> new ElevationDrawing(profiles, letters), letters, colours,
				TableZoom.pixelsAt(FIRST_SCALE));
	}
}
