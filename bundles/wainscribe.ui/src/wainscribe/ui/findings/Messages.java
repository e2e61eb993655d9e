// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.findings;

import org.eclipse.osgi.util.NLS;

/** Words of the Findings view. */
final class Messages extends NLS {

	static String FindingCounts_Advice;
	static String FindingCounts_Error;
	static String FindingCounts_Errors;
	static String FindingCounts_None;
	static String FindingCounts_Warning;
	static String FindingCounts_Warnings;
	static String FindingDetail_Name;
	static String FindingDetail_NotMeasured;
	static String FindingDetail_Nothing;
	static String FindingDetail_Rule;
	static String FindingDetail_Source;
	static String FindingDetail_Where;
	static String FindingWords_Advice;
	static String FindingWords_Base;
	static String FindingWords_Error;
	static String FindingWords_Frame;
	static String FindingWords_Line;
	static String FindingWords_Rail;
	static String FindingWords_Wall;
	static String FindingWords_Warning;
	static String FindingWords_WholeRoom;
	static String FindingsActions_Copy;
	static String FindingsActions_Show;
	static String FindingsActions_WholeHome;
	static String FindingsTree_Message;
	static String FindingsTree_Name;
	static String FindingsTree_Place;
	static String FindingsTree_Source;
	static String FindingsView_Checking;
	static String FindingsView_InOrder;
	static String FindingsView_NoRoom;
	static String FindingsView_NoRooms;
	static String FindingsView_Summary;

	static {
		NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
