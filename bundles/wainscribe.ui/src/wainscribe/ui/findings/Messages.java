// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.findings;

import org.eclipse.osgi.util.NLS;

/** Words of the Findings view. */
final class Messages extends NLS {

	public static String FindingCounts_Advice;
	public static String FindingCounts_Error;
	public static String FindingCounts_Errors;
	public static String FindingCounts_None;
	public static String FindingCounts_Warning;
	public static String FindingCounts_Warnings;
	public static String FindingDetail_Name;
	public static String FindingDetail_NotMeasured;
	public static String FindingDetail_Nothing;
	public static String FindingDetail_Rule;
	public static String FindingDetail_Source;
	public static String FindingDetail_Where;
	public static String FindingWords_Advice;
	public static String FindingWords_Base;
	public static String FindingWords_Error;
	public static String FindingWords_Frame;
	public static String FindingWords_Line;
	public static String FindingWords_Rail;
	public static String FindingWords_Wall;
	public static String FindingWords_Warning;
	public static String FindingWords_WholeRoom;
	public static String FindingsActions_Copy;
	public static String FindingsActions_Show;
	public static String FindingsActions_WholeHome;
	public static String FindingsTree_Message;
	public static String FindingsTree_Name;
	public static String FindingsTree_Place;
	public static String FindingsTree_Source;
	public static String FindingsView_Checking;
	public static String FindingsView_InOrder;
	public static String FindingsView_NoRoom;
	public static String FindingsView_NoRooms;
	public static String FindingsView_Summary;

	static {
		NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
