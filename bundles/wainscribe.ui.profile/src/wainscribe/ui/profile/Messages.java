// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile;

import org.eclipse.osgi.util.NLS;

/** Translated texts of this bundle. */
public final class Messages extends NLS {

	public static String AddPointTool_Line;
	public static String AddPointTool_Point;
	public static String AddPointTool_TakeBack;
	public static String BackdropMenu_Choose;
	public static String BackdropMenu_ChooseTitle;
	public static String BackdropMenu_Hide;
	public static String BackdropMenu_Move;
	public static String BackdropMenu_Name;
	public static String BackdropMenu_NoPicture;
	public static String BackdropMenu_Remove;
	public static String BackdropMenu_Scale;
	public static String BackdropMenu_Show;
	public static String CoordinateField_Out;
	public static String CoordinateField_Rise;
	public static String CoordinateField_Up;
	public static String DistanceField_AboveZero;
	public static String DistanceField_Real;
	public static String DragNodeEditPolicy_Handle;
	public static String DragNodeEditPolicy_Point;
	public static String DragNodeEditPolicy_Segment;
	public static String DrawingUnit_Centimetre;
	public static String DrawingUnit_Inch;
	public static String DrawingUnit_Millimetre;
	public static String DrawingUnit_Pixel;
	public static String DrawingUnit_Point;
	public static String ImportOutline_Name;
	public static String ImportOutline_Step;
	public static String ImportOutline_Title;
	public static String MoveBackdropTool_Label;
	public static String NewProfilePage_AboveZero;
	public static String NewProfilePage_Description;
	public static String NewProfilePage_Face;
	public static String NewProfilePage_Name;
	public static String NewProfilePage_NoHome;
	public static String NewProfilePage_NoName;
	public static String NewProfilePage_Number;
	public static String NewProfilePage_Preview;
	public static String NewProfilePage_Shape;
	public static String NewProfilePage_Thickness;
	public static String NewProfilePage_Title;
	public static String NewProfileWizard_Title;
	public static String NodePropertySource_Back;
	public static String NodePropertySource_Face;
	public static String NodePropertySource_Kind;
	public static String NodePropertySource_Length;
	public static String NodePropertySource_Out;
	public static String NodePropertySource_Part;
	public static String NodePropertySource_Place;
	public static String NodePropertySource_Radius;
	public static String NodePropertySource_Rise;
	public static String NodePropertySource_Up;
	public static String NodeWords_Arc;
	public static String NodeWords_BackValue;
	public static String NodeWords_Curve;
	public static String NodeWords_FaceValue;
	public static String NodeWords_FirstHandle;
	public static String NodeWords_Line;
	public static String NodeWords_Middle;
	public static String NodeWords_Moved;
	public static String NodeWords_Place;
	public static String NodeWords_Point;
	public static String NodeWords_SecondHandle;
	public static String NodeWords_Segment;
	public static String NumbersBar_LastSound;
	public static String OpenProfile_NotSound;
	public static String OutlineDialog_Measures;
	public static String OutlineDialog_Size;
	public static String OutlineDialog_Sound;
	public static String OutlineDialog_Take;
	public static String OutlineDialog_ToMend;
	public static String OutlineDialog_Unit;
	public static String ProfileEditor_NoProfileFile;
	public static String ProfilePropertySource_Area;
	public static String ProfilePropertySource_Bare;
	public static String ProfilePropertySource_ChangeFinish;
	public static String ProfilePropertySource_ChangeMaterial;
	public static String ProfilePropertySource_ChangeName;
	public static String ProfilePropertySource_ChangeSupply;
	public static String ProfilePropertySource_ChangeUses;
	public static String ProfilePropertySource_Coping;
	public static String ProfilePropertySource_Face;
	public static String ProfilePropertySource_Finish;
	public static String ProfilePropertySource_Girth;
	public static String ProfilePropertySource_Material;
	public static String ProfilePropertySource_Name;
	public static String ProfilePropertySource_No;
	public static String ProfilePropertySource_NotRecorded;
	public static String ProfilePropertySource_Prefinished;
	public static String ProfilePropertySource_Primed;
	public static String ProfilePropertySource_Profile;
	public static String ProfilePropertySource_Projection;
	public static String ProfilePropertySource_Section;
	public static String ProfilePropertySource_Supply;
	public static String ProfilePropertySource_Uses;
	public static String ProfilePropertySource_Yes;
	public static String ProfileSheet_Subtitle;
	public static String SaveSheet_Name;
	public static String SaveSheet_NotWritten;
	public static String SaveSheet_Title;
	public static String ScaleBackdropTool_First;
	public static String ScaleBackdropTool_Label;
	public static String ScaleBackdropTool_Second;
	public static String SectionContextMenu_Type;
	public static String SectionNumbers_Area;
	public static String SectionNumbers_Copes;
	public static String SectionNumbers_Face;
	public static String SectionNumbers_Girth;
	public static String SectionNumbers_MitreOnly;
	public static String SectionNumbers_Projection;
	public static String SectionNumbers_SquareCentimetres;
	public static String SectionNumbers_SquareInches;
	public static String SectionSteps_Arc;
	public static String SectionSteps_Back;
	public static String SectionSteps_Clear;
	public static String SectionSteps_Close;
	public static String SectionSteps_Curve;
	public static String SectionSteps_Delete;
	public static String SectionSteps_DeleteMany;
	public static String SectionSteps_Insert;
	public static String SectionSteps_Line;
	public static String SectionSteps_Mirror;
	public static String SectionSteps_Nudge;
	public static String SectionSteps_NudgeMany;
	public static String SectionSteps_Place;
	public static String SectionToolBar_Draw;
	public static String SectionToolBar_Fit;
	public static String SectionToolBar_Larger;
	public static String SectionToolBar_Scale;
	public static String SectionToolBar_Select;
	public static String SectionToolBar_Smaller;
	public static String SectionToolBar_TrueSize;
	public static String SupplyText_Price;

	static {
		initializeMessages("wainscribe.ui.profile.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
