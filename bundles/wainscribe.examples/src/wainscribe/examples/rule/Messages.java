// SPDX-License-Identifier: EPL-2.0
package wainscribe.examples.rule;

import org.eclipse.osgi.util.NLS;

/** What the example rule says. */
final class Messages extends NLS {

	public static String ArtOnMouldingCheck_Near;

	static {
		initializeMessages("wainscribe.examples.rule.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
