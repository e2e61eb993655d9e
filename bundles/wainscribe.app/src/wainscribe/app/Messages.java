// SPDX-License-Identifier: EPL-2.0
package wainscribe.app;

import org.eclipse.osgi.util.NLS;

/** The words of the desktop's own menus and messages. */
final class Messages extends NLS {

	static String DesktopActionBarAdvisor_Edit;
	static String DesktopActionBarAdvisor_File;
	static String DesktopActionBarAdvisor_Help;
	static String DesktopActionBarAdvisor_New;
	static String DesktopActionBarAdvisor_RestoreArrangement;
	static String DesktopActionBarAdvisor_View;
	static String DesktopApplication_FolderInUse;
	static String DesktopApplication_FolderUnusable;
	static String DesktopApplication_Title;
	static String WindowTitle_PartAndProduct;

	static {
		NLS.initializeMessages("wainscribe.app.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
