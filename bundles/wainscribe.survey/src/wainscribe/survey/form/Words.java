// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey.form;

import java.util.Collection;
import java.util.List;

import org.eclipse.osgi.util.NLS;

/** Lists of words in messages. */
final class Words {

	private Words() {
	}

	/** Returns {@code a, b or c}. */
	static String either(Collection<String> words) {
		List<String> all = List.copyOf(words);
		if (all.size() < 2) {
			return String.join("", all); //$NON-NLS-1$
		}
		return NLS.bind(Messages.Words_Or, String.join(", ", all.subList(0, all.size() - 1)), all.getLast()); //$NON-NLS-1$
	}
}
