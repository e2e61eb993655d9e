// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.export;

import org.eclipse.osgi.util.NLS;

/** Words of the wizard that writes client packs. */
final class Messages extends NLS {

	public static String ExportPackPage_Browse;
	public static String ExportPackPage_Description;
	public static String ExportPackPage_Folder;
	public static String ExportPackPage_FolderIsFile;
	public static String ExportPackPage_FolderMessage;
	public static String ExportPackPage_FolderNotAbsolute;
	public static String ExportPackPage_FolderTitle;
	public static String ExportPackPage_FolderWrong;
	public static String ExportPackPage_NoRooms;
	public static String ExportPackPage_Open;
	public static String ExportPackPage_OpenErrors;
	public static String ExportPackPage_OpenFindings;
	public static String ExportPackPage_Rooms;
	public static String ExportPackPage_Title;
	public static String ExportPackPage_WholeHome;
	public static String ExportPackWizard_Stopped;
	public static String ExportPackWizard_Title;
	public static String PackExport_Task;

	static {
		NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
