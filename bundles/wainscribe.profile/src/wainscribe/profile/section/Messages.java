// SPDX-License-Identifier: EPL-2.0
package wainscribe.profile.section;

import org.eclipse.osgi.util.NLS;

/** Translated texts of this package. */
final class Messages extends NLS {

	public static String SectionCheck_BehindBack;
	public static String SectionCheck_Crosses;
	public static String SectionCheck_NoArea;
	public static String SectionCheck_NoBack;
	public static String SectionCheck_NoFace;
	public static String SectionCheck_Open;
	public static String SectionCheck_Size;

	static {
		NLS.initializeMessages("wainscribe.profile.section.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
