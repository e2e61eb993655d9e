// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation;

import org.eclipse.core.runtime.IExtensionRegistry;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.Platform;

import wainscribe.drawing.elevation.ElevationDrawing;
import wainscribe.layout.PatternRoomDesigner;
import wainscribe.layout.RoomDesigner;
import wainscribe.layout.pattern.PatternReader;
import wainscribe.profile.ProfileCatalogue;
import wainscribe.profile.RegisteredProfiles;
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
		IExtensionRegistry registry = Platform.getExtensionRegistry();
		ProfileCatalogue profiles = new RegisteredProfiles(registry, ILog.get()::log).catalogue();
		RoomDesigner designer = new PatternRoomDesigner(new PatternReader(registry).read(), profiles).withoutAdvice();
		return new DrawingTable(session, designer, new ElevationDrawing(profiles, letters), letters, colours,
				TableZoom.pixelsAt(FIRST_SCALE));
	}
}
