// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules;

import org.eclipse.osgi.util.NLS;

/** Texts of this package. */
final class Messages extends NLS {

	public static String RuleEngine_Failed;

	static {
		initializeMessages("wainscribe.rules.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
