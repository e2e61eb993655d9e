// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.session;

import org.eclipse.osgi.util.NLS;

/** Words of the sessions. */
final class Messages extends NLS {

	static String HomeSessionRegistry_NoRoomOfHome;
	static String OpenHome_RoomFileGone;
	static String RoomCheck_Job;

	static {
		NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
