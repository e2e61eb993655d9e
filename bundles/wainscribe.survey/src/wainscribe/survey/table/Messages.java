// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey.table;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String HeaderRow_ColumnMissing;
	public static String HeaderRow_ColumnTwice;
	public static String HeaderRow_UnknownColumn;
	public static String SurveyTable_ControlCharacter;
	public static String SurveyTable_NoHeader;
	public static String SurveyTable_NoRows;
	public static String SurveyTable_Quotes;
	public static String SurveyTable_TooManyCells;
	public static String SurveyTable_TooManyRows;
	public static String SurveyTable_UnitsBelowHeader;
	public static String SurveyTable_UnitsTwo;
	public static String SurveyTable_UnitsUnknown;
	public static String SurveyText_FileTooLarge;
	public static String SurveyText_LineTooLong;
	public static String SurveyText_NotUtf8;

	static {
		NLS.initializeMessages("wainscribe.survey.table.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
