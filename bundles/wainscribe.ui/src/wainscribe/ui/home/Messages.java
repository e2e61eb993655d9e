// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.home;

import org.eclipse.osgi.util.NLS;

/** Words of the Home view. */
final class Messages extends NLS {

	public static String HomeRow_Frame;
	public static String HomeRow_Frames;
	public static String HomeRow_HeightMissing;
	public static String HomeRow_NoFrames;
	public static String HomeRow_NoRooms;
	public static String HomeRow_NotMeasured;
	public static String HomeRow_Profile;
	public static String HomeRow_ProfileNotSound;
	public static String HomeRow_Room;
	public static String HomeRow_Rooms;
	public static String HomeRow_Unreadable;
	public static String HomeRow_Unsaved;
	public static String HomeRow_Wall;
	public static String HomeRow_Walls;
	public static String HomeTree_Name;
	public static String NoHomesPage_NewHome;
	public static String NoHomesPage_OpenHome;
	public static String NoHomesPage_Text;
	public static String NoHomesPage_Title;

	static {
		NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
