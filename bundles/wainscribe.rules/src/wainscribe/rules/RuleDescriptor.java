// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;

/**
 * A rule as data, with the way to its check.
 *
 * @param id          id of the rule, unique
 * @param area        trade area: layout, trim, services, heat, fixtures, paint, hazards or one of a contributor's own
 * @param severity    severity of its findings unless the check says otherwise
 * @param name        short name shown in lists
 * @param statement   what must hold, in plain words with its figures
 * @param source      edition and section, or the kind of publication, or common practice
 * @param status      how far the source was confirmed
 * @param profiles    rule profiles it applies to: {@code any}, {@code us}, {@code uk}, {@code ca} ...
 * @param options     figures the user may change
 * @param reads       what its result depends on: names of model classes, {@code Class.feature}, or {@code layout}
 * @param contributor bundle that brought it
 * @param check       makes the check, late; may throw, which becomes a finding
 */
public record RuleDescriptor(String id, String area, Severity severity, String name, String statement, String source,
		SourceStatus status, Set<String> profiles, List<RuleOption> options, Set<String> reads, String contributor,
		Supplier<? extends RuleCheck> check) {

	/** Profile of rules that hold everywhere. */
	public static final String ANYWHERE = "any"; //$NON-NLS-1$
	/** Word in {@link #reads()} for the derived layout. */
	public static final String LAYOUT = "layout"; //$NON-NLS-1$

	/** Refuses nulls and copies the collections. */
	public RuleDescriptor {
		Objects.requireNonNull(id);
		Objects.requireNonNull(area);
		Objects.requireNonNull(severity);
		Objects.requireNonNull(name);
		Objects.requireNonNull(statement);
		Objects.requireNonNull(source);
		Objects.requireNonNull(status);
		Objects.requireNonNull(contributor);
		Objects.requireNonNull(check);
		profiles = Set.copyOf(profiles);
		options = List.copyOf(options);
		reads = Set.copyOf(reads);
	}

	/** Tells whether the rule holds in any of the given profiles. */
	public boolean appliesTo(Set<String> active) {
		return profiles.contains(ANYWHERE) || profiles.stream().anyMatch(active::contains);
	}

	/** Finds an option by its key. */
	public Optional<RuleOption> option(String key) {
		return options.stream().filter(option -> option.key().equals(key)).findFirst();
	}

	/** Returns the source as findings cite it; a source that was not confirmed says so. */
	public String citation() {
		return status == SourceStatus.FROM_MEMORY ? source + " (" + status.word() + ")" : source; //$NON-NLS-1$ //$NON-NLS-2$
	}
}
