// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.placing;

import org.eclipse.osgi.util.NLS;

/** Why frames can't be carried over. */
final class Messages extends NLS {

	public static String FramePlacing_Climbs;
	public static String FramePlacing_InTheWay;
	public static String FramePlacing_TooHigh;
	public static String FramePlacing_TooLong;
	public static String FramePlacing_TooLow;

	static {
		initializeMessages("wainscribe.layout.placing.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
