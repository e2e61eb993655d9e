// SPDX-License-Identifier: EPL-2.0
package wainscribe.app;

import org.eclipse.osgi.util.NLS;

/** The words of the desktop's own menus and messages. */
final class Messages extends NLS {

	public static String DesktopActionBarAdvisor_Close;
	public static String DesktopActionBarAdvisor_Edit;
	public static String DesktopActionBarAdvisor_File;
	public static String DesktopActionBarAdvisor_Help;
	public static String DesktopActionBarAdvisor_New;
	public static String DesktopActionBarAdvisor_RestoreArrangement;
	public static String DesktopActionBarAdvisor_View;
	public static String DesktopApplication_FolderInUse;
	public static String DesktopApplication_FolderUnusable;
	public static String DesktopApplication_Title;
	public static String WindowTitle_PartAndProduct;

	static {
		NLS.initializeMessages("wainscribe.app.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
