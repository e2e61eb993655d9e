// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.hazards;

import org.eclipse.osgi.util.NLS;

/** What the rules of hazards say. */
final class Messages extends NLS {

	public static String DisturbedLeadPaintCheck_Ask;
	public static String DisturbedLeadPaintCheck_Old;
	public static String DisturbedTextureCheck_Suspect;
	public static String HeavyLiftCheck_Heavy;
	public static String SuspectTextureCheck_Ask;
	public static String SuspectTextureCheck_Old;

	static {
		initializeMessages("wainscribe.rules.hazards.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
