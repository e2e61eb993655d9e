// SPDX-License-Identifier: EPL-2.0
package wainscribe.takeoff.cutting;

import org.eclipse.osgi.util.NLS;

/** Translated texts of this package. */
final class Messages extends NLS {

	public static String PlanAcceptance_Origin;

	static {
		NLS.initializeMessages("wainscribe.takeoff.cutting.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
