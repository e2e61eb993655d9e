// SPDX-License-Identifier: EPL-2.0
package wainscribe.profile;

import org.eclipse.osgi.util.NLS;

/** Translated texts of this bundle. */
final class Messages extends NLS {

	public static String ProfileCatalogue_Unknown;

	static {
		NLS.initializeMessages("wainscribe.profile.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
