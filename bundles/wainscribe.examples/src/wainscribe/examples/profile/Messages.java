// SPDX-License-Identifier: EPL-2.0
package wainscribe.examples.profile;

import org.eclipse.osgi.util.NLS;

/** Names of the example profiles. */
final class Messages extends NLS {

	public static String BeadedBands_Beads;
	public static String BeadedBands_Name;
	public static String ReededProfiles_Name;

	static {
		initializeMessages("wainscribe.examples.profile.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
