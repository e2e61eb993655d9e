// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.properties;

import java.util.ArrayList;
import java.util.List;

/**
 * What can be chosen in a brief.
 *
 * @param patternIds ids of the wall patterns, in the order shown
 * @param words      what they are called
 */
record ChoicesOfBrief(List<String> patternIds, FeatureWords words) {

	/** Returns the wall patterns, with the choice to leave it to the home first. */
	Choices patterns() {
		List<Object> ids = new ArrayList<>();
		ids.add(null);
		ids.addAll(patternIds);
		return new Choices(ids, this::nameOf);
	}

	private String nameOf(Object id) {
		return id == null ? words.word("not-decided") : words.wordOr("pattern." + id, id.toString()); //$NON-NLS-1$ //$NON-NLS-2$
	}
}
