// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.newhome;

import org.eclipse.osgi.util.NLS;

/** Words of the wizard for a new home. */
final class Messages extends NLS {

	public static String NewHomePage_Browse;
	public static String NewHomePage_Built;
	public static String NewHomePage_BuiltHint;
	public static String NewHomePage_BuiltWrong;
	public static String NewHomePage_Country;
	public static String NewHomePage_Description;
	public static String NewHomePage_Folder;
	public static String NewHomePage_FolderIsFile;
	public static String NewHomePage_FolderIsHome;
	public static String NewHomePage_FolderMessage;
	public static String NewHomePage_FolderNotAbsolute;
	public static String NewHomePage_FolderTitle;
	public static String NewHomePage_FolderWrong;
	public static String NewHomePage_Inches;
	public static String NewHomePage_Millimetres;
	public static String NewHomePage_Name;
	public static String NewHomePage_NameHint;
	public static String NewHomePage_NameMissing;
	public static String NewHomePage_ThenRooms;
	public static String NewHomePage_Title;
	public static String NewHomePage_Units;
	public static String NewHomeWizard_Title;

	static {
		NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
