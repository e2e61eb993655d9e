// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.properties;

import java.util.List;
import java.util.function.Function;

/**
 * The values a property may have, each with its words.
 *
 * @param values in the order shown; may hold null for not recorded
 * @param words  what each is called
 */
public record Choices(List<Object> values, Function<Object, String> words) {

	/** Returns what all values are called, in their order. */
	public String[] names() {
		return values.stream().map(words).toArray(String[]::new);
	}

	/** Returns what one value is called. */
	public String nameOf(Object value) {
		return words.apply(value);
	}
}
