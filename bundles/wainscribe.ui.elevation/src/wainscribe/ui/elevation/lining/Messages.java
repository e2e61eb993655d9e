// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.lining;

import org.eclipse.osgi.util.NLS;

/** Texts of lining things up. */
final class Messages extends NLS {

	public static String LiningMenu_Title;
	public static String LiningWords_Bottom;
	public static String LiningWords_Centre;
	public static String LiningWords_Left;
	public static String LiningWords_Middle;
	public static String LiningWords_Right;
	public static String LiningWords_SpaceAlong;
	public static String LiningWords_SpaceUp;
	public static String LiningWords_Top;

	static {
		initializeMessages("wainscribe.ui.elevation.lining.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
