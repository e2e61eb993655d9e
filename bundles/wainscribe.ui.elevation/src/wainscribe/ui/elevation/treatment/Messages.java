// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.treatment;

import org.eclipse.osgi.util.NLS;

/** Texts of copying treatments and frames. */
final class Messages extends NLS {

	public static String CopyFramesPage_Description;
	public static String CopyFramesPage_Fits;
	public static String CopyFramesPage_From;
	public static String CopyFramesPage_LeftEnd;
	public static String CopyFramesPage_Middle;
	public static String CopyFramesPage_NothingChosen;
	public static String CopyFramesPage_Title;
	public static String CopyFramesPage_Walls;
	public static String CopyFramesPage_WallRow;
	public static String CopyFramesWizard_Title;
	public static String CopyTreatmentPage_Description;
	public static String CopyTreatmentPage_NoPart;
	public static String CopyTreatmentPage_NoRoom;
	public static String CopyTreatmentPage_OnlyRoom;
	public static String CopyTreatmentPage_Parts;
	public static String CopyTreatmentPage_Rooms;
	public static String CopyTreatmentPage_Title;
	public static String CopyTreatmentWizard_Title;
	public static String PartWords_BaseAndCrown;
	public static String PartWords_Gaps;
	public static String PartWords_Moulding;
	public static String PartWords_Pattern;
	public static String PartWords_Rail;
	public static String PartWords_Stock;

	static {
		initializeMessages("wainscribe.ui.elevation.treatment.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
