// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.handlers;

import org.eclipse.osgi.util.NLS;

/** Words of the commands' own small dialogs. */
final class Messages extends NLS {

	public static String ExportPackHandler_NoHome;
	public static String ExportPackHandler_Title;
	public static String OpenHomeHandler_Message;
	public static String OpenHomeHandler_Title;

	static {
		NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
