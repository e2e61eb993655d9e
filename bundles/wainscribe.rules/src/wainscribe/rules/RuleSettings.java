// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * What a user changed about the rules: figures, and profiles beyond the one the home's country chooses. Immutable.
 *
 * @param values   changed options by {@code rule/option}
 * @param profiles profiles switched on besides the country's, such as {@code accessible} or {@code comfort}
 */
public record RuleSettings(Map<String, String> values, Set<String> profiles) {

	/** Nothing changed. */
	public static final RuleSettings DEFAULT = new RuleSettings(Map.of(), Set.of());

	/** Copies the collections. */
	public RuleSettings {
		values = Map.copyOf(values);
		profiles = Set.copyOf(profiles);
	}

	/** Returns a copy with one option of a rule changed. */
	public RuleSettings with(String rule, String option, String value) {
		Map<String, String> changed = new LinkedHashMap<>(values);
		changed.put(rule + '/' + option, value);
		return new RuleSettings(changed, profiles);
	}

	/** Returns a copy with one more profile switched on. */
	public RuleSettings withProfile(String profile) {
		Set<String> more = new TreeSet<>(profiles);
		more.add(profile);
		return new RuleSettings(values, more);
	}

	/** Returns the changed value of an option; empty where the default holds. */
	public Optional<String> changed(String rule, String option) {
		return Optional.ofNullable(values.get(rule + '/' + option));
	}
}
