// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.trim;

import org.eclipse.osgi.util.NLS;

/** What the rules of trim say. */
final class Messages extends NLS {

	public static String BaseProudOfCasingCheck_Proud;
	public static String DeepNailCheck_Ask;
	public static String DeepNailCheck_Deep;
	public static String DryOrDampRoomCheck_Room;
	public static String NailInCableZoneCheck_Wall;
	public static String NailInPlumbingWallCheck_Wall;
	public static String RailNeedsJointCheck_Long;
	public static String RailProudOfCasingCheck_Ask;
	public static String RailProudOfCasingCheck_Proud;
	public static String ShallowNailCheck_Rail;
	public static String SplicedFrameCheck_Side;
	public static String SplicedFrameCheck_Strip;
	public static String WetBoardCheck_Near;

	static {
		initializeMessages("wainscribe.rules.trim.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
