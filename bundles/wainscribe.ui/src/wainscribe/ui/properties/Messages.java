// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.properties;

import org.eclipse.osgi.util.NLS;

/** Words of the property sheet besides those of the model. */
final class Messages extends NLS {

	static String AmountText_Expected;
	static String AngleText_Expected;
	static String ColourText_Expected;
	static String Decision_Inherited;
	static String LengthText_ExpectedAboveZero;
	static String LengthText_ExpectedZeroOrMore;
	static String LengthText_TooLong;
	static String MeasureText_AirFlow;
	static String MeasureText_Expected;
	static String MeasureText_Mass;
	static String MeasureText_Share;
	static String MeasureText_Temperature;
	static String PropertySheetPanel_Name;
	static String PropertySheetPanel_Nothing;
	static String PropertySheetPanel_NothingHint;
	static String SubjectWords_Frame;
	static String SubjectWords_OnWall;
	static String SubjectWords_Wall;
	static String TextValueEditor_Required;
	static String WholeNumberText_Expected;

	static {
		NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
