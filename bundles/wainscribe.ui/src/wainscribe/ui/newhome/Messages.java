// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.newhome;

import org.eclipse.osgi.util.NLS;

/** Words of the wizard for a new home. */
final class Messages extends NLS {

	static String NewHomePage_Browse;
	static String NewHomePage_Built;
	static String NewHomePage_BuiltHint;
	static String NewHomePage_BuiltWrong;
	static String NewHomePage_Country;
	static String NewHomePage_Description;
	static String NewHomePage_Folder;
	static String NewHomePage_FolderIsFile;
	static String NewHomePage_FolderIsHome;
	static String NewHomePage_FolderMessage;
	static String NewHomePage_FolderNotAbsolute;
	static String NewHomePage_FolderTitle;
	static String NewHomePage_FolderWrong;
	static String NewHomePage_Inches;
	static String NewHomePage_Millimetres;
	static String NewHomePage_Name;
	static String NewHomePage_NameHint;
	static String NewHomePage_NameMissing;
	static String NewHomePage_ThenRooms;
	static String NewHomePage_Title;
	static String NewHomePage_Units;
	static String NewHomeWizard_Title;

	static {
		NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
