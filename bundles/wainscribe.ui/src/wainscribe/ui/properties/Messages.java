// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.properties;

import org.eclipse.osgi.util.NLS;

/** Words of the property sheet besides those of the model. */
final class Messages extends NLS {

	public static String AmountText_Expected;
	public static String AngleText_Expected;
	public static String ColourText_Expected;
	public static String Decision_Inherited;
	public static String LengthText_ExpectedAboveZero;
	public static String LengthText_ExpectedZeroOrMore;
	public static String LengthText_TooLong;
	public static String MeasureText_AirFlow;
	public static String MeasureText_Expected;
	public static String MeasureText_Mass;
	public static String MeasureText_Share;
	public static String MeasureText_Temperature;
	public static String PropertySheetPanel_Name;
	public static String PropertySheetPanel_Nothing;
	public static String PropertySheetPanel_NothingHint;
	public static String RoomPropertySource_Goes;
	public static String SubjectWords_Frame;
	public static String SubjectWords_OnWall;
	public static String SubjectWords_Wall;
	public static String TextValueEditor_Required;
	public static String WholeNumberText_Expected;

	static {
		NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
