// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation;

import org.eclipse.osgi.util.NLS;

/** Texts of the drawing table. */
public final class Messages extends NLS {

	public static String DragFeedback_InLineWith;
	public static String DragNotes_Frames;
	public static String DragNotes_Gap;
	public static String DragNotes_GapFramesHigh;
	public static String DragNotes_GapFramesWide;
	public static String DragNotes_GapsLeftRight;
	public static String DragNotes_Place;
	public static String DragNotes_RailTop;
	public static String DragNotes_Size;
	public static String DrawingTable_Problem;
	public static String DrawnNumbers_AboveFloor;
	public static String DrawnNumbers_Base;
	public static String DrawnNumbers_Edge;
	public static String DrawnNumbers_FromLeft;
	public static String DrawnNumbers_Gap;
	public static String DrawnNumbers_Head;
	public static String DrawnNumbers_RailTop;
	public static String DrawnNumbers_RailUnderside;
	public static String DrawnNumbers_Sill;
	public static String DrawnNumbers_Width;
	public static String ElementText_GoesValue;
	public static String ElementText_NamedThing;
	public static String ElementText_NotMeasured;
	public static String ElementText_ThingValue;
	public static String ElementText_UnnamedWall;
	public static String ElementText_Wall;
	public static String ElementText_WallValue;
	public static String ElevationEditor_NoRoomFile;
	public static String FrameText_LockedValue;
	public static String FrameText_Name;
	public static String FrameText_Value;
	public static String StripText_Batten;
	public static String StripText_Board;
	public static String StripText_Stile;
	public static String GhostFigure_Of;
	public static String Ghost_Left;
	public static String Ghost_None;
	public static String Ghost_Opposite;
	public static String Ghost_Right;
	public static String GuidePull_Level;
	public static String GuidePull_Plumb;
	public static String LayerGroup_Dimensions;
	public static String LayerGroup_Fixtures;
	public static String LayerGroup_InTheWall;
	public static String LayerGroup_Names;
	public static String LayerGroup_Pieces;
	public static String LayerGroup_Treatment;
	public static String LineEditPart_AboveFloor;
	public static String LineEditPart_FromLeft;
	public static String MeasureTool_AlongUp;
	public static String MeasureTool_Straight;
	public static String Overlay_Axes;
	public static String Overlay_Guides;
	public static String Overlay_Overview;
	public static String OverviewBar_Name;
	public static String OverviewBar_Value;
	public static String QuietBar_AndMore;
	public static String QuietBar_Name;
	public static String RailEditPart_Name;
	public static String RailEditPart_Value;
	public static String RemoveFrameEditPolicy_Label;
	public static String SnapLines_Base;
	public static String SnapLines_Corner;
	public static String SnapLines_MiddleOfWall;
	public static String SnapLines_OneGap;
	public static String SnapLines_Rail;
	public static String TableActions_Lock;
	public static String TableActions_Release;
	public static String TableContextMenu_FitRoom;
	public static String TableContextMenu_FitWall;
	public static String TableContextMenu_Gap;
	public static String TableContextMenu_Layers;
	public static String TableContextMenu_TypeNumber;
	public static String TableToolBar_Add;
	public static String TableToolBar_AddAxis;
	public static String TableToolBar_AddFixture;
	public static String TableToolBar_Larger;
	public static String TableToolBar_Measure;
	public static String TableToolBar_Scale;
	public static String TableToolBar_Select;
	public static String TableToolBar_Smaller;

	static {
		initializeMessages("wainscribe.ui.elevation.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
