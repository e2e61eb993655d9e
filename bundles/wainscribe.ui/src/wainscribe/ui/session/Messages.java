// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.session;

import org.eclipse.osgi.util.NLS;

/** Words of the sessions. */
final class Messages extends NLS {

	public static String HistoryActions_Redo;
	public static String HistoryActions_RedoStep;
	public static String HistoryActions_Undo;
	public static String HistoryActions_UndoStep;
	public static String HomeProjects_NoHome;
	public static String HomeProjects_NotEmpty;
	public static String HomeSessionRegistry_NoRoomOfHome;
	public static String OpenHome_RoomFileGone;
	public static String RoomCheck_Job;

	static {
		NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
