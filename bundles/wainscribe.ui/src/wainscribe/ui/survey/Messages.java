// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.survey;

import org.eclipse.osgi.util.NLS;

/** Words of the wizard that adds rooms from a survey. */
final class Messages extends NLS {

	public static String AddRoomsWizard_Title;
	public static String ChangeWords_Home;
	public static String ChangeWords_NewRoom;
	public static String ChangeWords_Nothing;
	public static String ChangeWords_Room;
	public static String SurveyIntoHome_Task;
	public static String SurveyPage_AllFiles;
	public static String SurveyPage_Browse;
	public static String SurveyPage_CsvFiles;
	public static String SurveyPage_Description;
	public static String SurveyPage_Doubtful;
	public static String SurveyPage_File;
	public static String SurveyPage_FileHint;
	public static String SurveyPage_FileTitle;
	public static String SurveyPage_Home;
	public static String SurveyPage_NoFile;
	public static String SurveyPage_NoHome;
	public static String SurveyPage_NothingYet;
	public static String SurveyPage_Outcome;
	public static String SurveyPage_Problems;
	public static String SurveyPage_Refused;
	public static String SurveyPage_RefusedOnce;
	public static String SurveyPage_Rows;
	public static String SurveyPage_Title;
	public static String SurveyPage_UnsavedFirst;
	public static String SurveyTableViewer_File;
	public static String SurveyTableViewer_Name;
	public static String SurveyTableViewer_Row;

	static {
		NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
