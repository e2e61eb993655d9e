// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.home;

import org.eclipse.osgi.util.NLS;

/** Words of the Home view. */
final class Messages extends NLS {

	static String HomeRow_Frame;
	static String HomeRow_Frames;
	static String HomeRow_HeightMissing;
	static String HomeRow_NoFrames;
	static String HomeRow_NoRooms;
	static String HomeRow_NotMeasured;
	static String HomeRow_Room;
	static String HomeRow_Rooms;
	static String HomeRow_Unreadable;
	static String HomeRow_Unsaved;
	static String HomeRow_Wall;
	static String HomeRow_Walls;
	static String HomeTree_Name;
	static String NoHomesPage_NewHome;
	static String NoHomesPage_OpenHome;
	static String NoHomesPage_Text;
	static String NoHomesPage_Title;

	static {
		NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
