// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.paint;

import org.eclipse.osgi.util.NLS;

/** What the rules of paint and air say. */
final class Messages extends NLS {

	public static String ColdForPaintCheck_Room;
	public static String DampForPaintCheck_Room;
	public static String DampRoomCheck_Room;
	public static String DewOnWallCheck_Room;
	public static String FanNotOutdoorsCheck_Ask;
	public static String FanNotOutdoorsCheck_Attic;
	public static String FanNotOutdoorsCheck_None;
	public static String LowSheenInWetRoomCheck_Ask;
	public static String LowSheenInWetRoomCheck_Flat;
	public static String NoFanOrWindowCheck_Room;
	public static String UnknownOldTrimPaintCheck_Trim;
	public static String UnpreparedGlossCheck_Gloss;
	public static String UnsealedBoardEdgeCheck_Ask;
	public static String UnsealedBoardEdgeCheck_Unsealed;
	public static String UntestedForMildewCheck_Untested;
	public static String WeakFanCheck_Ask;
	public static String WeakFanCheck_Continuous;
	public static String WeakFanCheck_Demand;
	public static String WeakPaintInWetRoomCheck_Scrub;

	static {
		initializeMessages("wainscribe.rules.paint.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
