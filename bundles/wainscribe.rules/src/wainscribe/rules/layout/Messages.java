// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.layout;

import org.eclipse.osgi.util.NLS;

/** What the rules of layout say. */
final class Messages extends NLS {

	public static String AccessoryOnMouldingCheck_Near;
	public static String BowedWallCheck_Wall;
	public static String ControlCrowdedCheck_Near;
	public static String GrilleCrowdedCheck_Covered;
	public static String GrilleCrowdedCheck_Moulding;
	public static String MouldingThroughFixtureCheck_Crossed;
	public static String NarrowFrameCheck_Field;
	public static String NarrowFrameCheck_Width;
	public static String OddProportionCheck_Long;
	public static String OddProportionCheck_Square;
	public static String OutOfSquareCornerCheck_Corner;
	public static String PlateTooNearCheck_Near;
	public static String PlateTooNearCheck_Tight;
	public static String PlateTooNearCheck_Touches;
	public static String RailAtMidHeightCheck_Room;
	public static String RailNearMissCheck_Edge;
	public static String RailOffThirdCheck_Room;
	public static String RailOffTwoThirdsCheck_Room;
	public static String TankCrowdedCheck_Ask;
	public static String TankCrowdedCheck_Near;
	public static String UnequalGapCheck_AboveAndBelow;
	public static String UnequalGapCheck_Beside;
	public static String UnmatchedWallCheck_Corner;
	public static String UnusualEdgeGapCheck_Room;
	public static String UnusualGapCheck_Room;
	public static String WindowNotFollowedCheck_Window;

	static {
		initializeMessages("wainscribe.rules.layout.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
