// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.pattern;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String BattensUnderRail_Description;
	public static String BattensUnderRail_Name;
	public static String BoardsAndRails_Description;
	public static String BoardsAndRails_Name;
	public static String FramesToCeiling_Description;
	public static String FramesToCeiling_Name;
	public static String FramesTwoTier_Description;
	public static String FramesTwoTier_Name;
	public static String FramesUnderRail_Description;
	public static String FramesUnderRail_Name;
	public static String NoTreatment_Description;
	public static String NoTreatment_Name;
	public static String RailAndBase_Description;
	public static String RailAndBase_Name;
	public static String WideCentre_Description;
	public static String WideCentre_Name;

	static {
		NLS.initializeMessages("wainscribe.layout.pattern.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
