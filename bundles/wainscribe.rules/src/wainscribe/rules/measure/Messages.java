// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.measure;

import org.eclipse.osgi.util.NLS;

/** Names of mouldings in messages. */
final class Messages extends NLS {

	public static String Strip_Batten;
	public static String Strip_Board;
	public static String Strip_Frame;
	public static String Strip_Rail;
	public static String Strip_Stile;

	static {
		initializeMessages("wainscribe.rules.measure.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
