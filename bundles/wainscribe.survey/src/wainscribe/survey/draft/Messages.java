// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey.draft;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String DecisionBuilder_DecidedTwice;
	public static String DecisionBuilder_NameTwice;
	public static String DecisionBuilder_NoRooms;
	public static String DecisionBuilder_NoSurface;
	public static String DecisionBuilder_UnknownWall;
	public static String DraftBuilder_CornerTwice;
	public static String DraftBuilder_DiagonalEnds;
	public static String DraftBuilder_DiagonalSameWall;
	public static String DraftBuilder_HomeTwice;
	public static String DraftBuilder_LongName;
	public static String DraftBuilder_NoName;
	public static String DraftBuilder_None;
	public static String DraftBuilder_RoomTwice;
	public static String DraftBuilder_TooManyWalls;
	public static String DraftBuilder_UnknownKind;
	public static String DraftBuilder_UnknownRoom;
	public static String DraftBuilder_WallTwice;
	public static String Placement_Height;
	public static String Placement_HeightAboveFloor;
	public static String Placement_HeightOfCentre;
	public static String Placement_LowerEdge;
	public static String Placement_NoType;
	public static String Placement_PanelSize;
	public static String Placement_PlateSize;
	public static String Placement_PlateTaken;
	public static String Placement_Width;
	public static String Placement_WidthOfCentre;
	public static String RoomCheck_HighCeiling;
	public static String RoomCheck_LongWall;
	public static String RoomCheck_NoHeight;
	public static String RoomCheck_NoWalls;
	public static String RoomCheck_ShortWall;
	public static String RowFiller_CellNotUsed;
	public static String RowFiller_KeyTwice;
	public static String RowFiller_UnknownKey;
	public static String TriangleCheck_NoTriangle;
	public static String WallCheck_AboveCeiling;
	public static String WallCheck_BeforeStart;
	public static String WallCheck_BelowFloor;
	public static String WallCheck_NameTwice;
	public static String WallCheck_Overlap;
	public static String WallCheck_PastEnd;
	public static String WallContents_UnknownWall;

	static {
		NLS.initializeMessages("wainscribe.survey.draft.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
