// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey.form;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String AngleForm_Expected;
	public static String CellField_Required;
	public static String CentreField_Expected;
	public static String DecisionForms_Coats;
	public static String DecisionForms_ScrubClass;
	public static String FlagForm_Expected;
	public static String LengthForm_BelowZero;
	public static String LengthForm_NoTapeMark;
	public static String LengthForm_NoUnit;
	public static String LengthForm_NotAboveZero;
	public static String LengthForm_TooLong;
	public static String ListForm_EmptyItem;
	public static String LiteralForm_Expected;
	public static String MeasureForm_AirFlow;
	public static String MeasureForm_Expected;
	public static String MeasureForm_Mass;
	public static String MeasureForm_Share;
	public static String MeasureForm_Temperature;
	public static String NoteEntry_Syntax;
	public static String PlacedForms_DoorWidth;
	public static String PlacedForms_FaceHeight;
	public static String PlacedForms_FrameWidth;
	public static String PlacedForms_FromFloor;
	public static String PlacedForms_FromLeft;
	public static String PlacedForms_Gangs;
	public static String PlacedForms_Height;
	public static String PlacedForms_WindowWidth;
	public static String RoomForms_CornerDiagonal;
	public static String RoomForms_Distance;
	public static String RoomForms_LegNext;
	public static String RoomForms_LegThis;
	public static String RoomForms_WallLength;
	public static String RoomForms_Year;
	public static String SpanField_Order;
	public static String SpanField_Syntax;
	public static String StudField_OrUnknown;
	public static String WallNameForm_NoWalls;
	public static String WallNameForm_Walls;
	public static String WholeForm_Range;
	public static String WordForm_Colour;
	public static String WordForm_Country;
	public static String WordForm_Currency;
	public static String WordForm_Expected;
	public static String Words_Or;

	static {
		NLS.initializeMessages("wainscribe.survey.form.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
