// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.survey;

import org.eclipse.osgi.util.NLS;

/** Words of the wizard that adds rooms from a survey. */
final class Messages extends NLS {

	static String AddRoomsWizard_Title;
	static String ChangeWords_Home;
	static String ChangeWords_NewRoom;
	static String ChangeWords_Nothing;
	static String ChangeWords_Room;
	static String SurveyIntoHome_Task;
	static String SurveyPage_AllFiles;
	static String SurveyPage_Browse;
	static String SurveyPage_CsvFiles;
	static String SurveyPage_Description;
	static String SurveyPage_Doubtful;
	static String SurveyPage_File;
	static String SurveyPage_FileHint;
	static String SurveyPage_FileTitle;
	static String SurveyPage_Home;
	static String SurveyPage_NoFile;
	static String SurveyPage_NoHome;
	static String SurveyPage_NothingYet;
	static String SurveyPage_Outcome;
	static String SurveyPage_Refused;
	static String SurveyPage_RefusedOnce;
	static String SurveyPage_Rows;
	static String SurveyPage_Title;
	static String SurveyPage_UnsavedFirst;
	static String SurveyTableViewer_File;
	static String SurveyTableViewer_Name;
	static String SurveyTableViewer_Row;

	static {
		NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
