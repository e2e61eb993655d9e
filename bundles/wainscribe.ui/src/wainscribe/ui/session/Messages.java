// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.session;

import org.eclipse.osgi.util.NLS;

/** Words of the sessions. */
final class Messages extends NLS {

	static String HistoryActions_Redo;
	static String HistoryActions_RedoStep;
	static String HistoryActions_Undo;
	static String HistoryActions_UndoStep;
	static String HomeProjects_NoHome;
	static String HomeProjects_NotEmpty;
	static String HomeSessionRegistry_NoRoomOfHome;
	static String OpenHome_RoomFileGone;
	static String RoomCheck_Job;

	static {
		NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
