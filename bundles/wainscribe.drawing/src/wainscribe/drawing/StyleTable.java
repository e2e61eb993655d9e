// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/** The look of every role. Immutable. */
public final class StyleTable {

	private final Map<Role, Style> styles;

	private StyleTable(Map<Role, Style> styles) {
		this.styles = styles;
	}

	/**
	 * Creates a table.
	 *
	 * @param styles one for every role
	 * @throws IllegalArgumentException if a role has none
	 */
	public static StyleTable of(Map<Role, Style> styles) {
		for (Role role : Role.values()) {
			if (!styles.containsKey(role)) {
				throw new IllegalArgumentException("no style for " + role);
			}
		}
		return new StyleTable(Collections.unmodifiableMap(new EnumMap<>(styles)));
	}

	/** Returns the look of a role. */
	public Style of(Role role) {
		return styles.get(role);
	}

	/** Returns a table in which some roles look different. */
	public StyleTable with(Map<Role, Style> others) {
		Map<Role, Style> all = new EnumMap<>(styles);
		all.putAll(others);
		return of(all);
	}
}
