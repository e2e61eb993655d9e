// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.axes;

import org.eclipse.osgi.util.NLS;

/** What is said of axes. */
final class Messages extends NLS {

	public static String AxisCheck_Marked;
	public static String AxisCheck_Of;
	public static String AxisFit_Centred;
	public static String AxisFit_Frame;
	public static String AxisFit_Left;
	public static String AxisFit_NoteCentred;
	public static String AxisFit_NoteLeft;
	public static String AxisFit_NoteRight;
	public static String AxisFit_Right;
	public static String AxisFit_Space;

	static {
		initializeMessages("wainscribe.layout.axes.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
