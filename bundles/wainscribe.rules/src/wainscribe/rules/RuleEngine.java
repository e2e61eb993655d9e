// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.function.Predicate;

import org.eclipse.core.runtime.OperationCanceledException;
import org.eclipse.osgi.util.NLS;

import wainscribe.layout.RoomDesign;

/** Runs rules on rooms. Immutable; may be used from any thread. */
public final class RuleEngine {

	private final List<RuleDescriptor> rules;

	/**
	 * Creates an engine.
	 *
	 * @param rules the rules, in the order in which findings of one weight are listed; each id once
	 * @throws IllegalArgumentException if two rules have one id
	 * @see RuleCatalogue
	 */
	public RuleEngine(List<RuleDescriptor> rules) {
		this.rules = List.copyOf(rules);
		Set<String> seen = new HashSet<>();
		for (RuleDescriptor rule : rules) {
			if (!seen.add(rule.id())) {
				throw new IllegalArgumentException("two rules with the id " + rule.id()); //$NON-NLS-1$
			}
		}
	}

	/** Returns the rules of this engine. */
	public List<RuleDescriptor> rules() {
		return rules;
	}

	/** Returns an engine that runs only some of the rules: those that read what was edited, or one for a test. */
	public RuleEngine only(Predicate<? super RuleDescriptor> wanted) {
		return new RuleEngine(rules.stream().filter(wanted).toList());
	}

	/** Runs all rules on a room with the default figures. */
	public List<Finding> check(RoomDesign design) {
		return check(design, RuleSettings.DEFAULT, () -> false);
	}

	/** Runs all rules on rooms with the default figures; findings stand in the order of the rooms. */
	public List<Finding> check(Collection<RoomDesign> designs) {
		return designs.stream().flatMap(design -> check(design).stream()).toList();
	}

	/**
	 * Runs all rules that apply to a room.
	 *
	 * @param design    the room as laid out
	 * @param settings  what the user changed about the rules
	 * @param cancelled asked between rules; true stops the run
	 * @return findings, the heaviest first, then in the order of walls and rules
	 * @throws OperationCanceledException if cancelled
	 */
	public List<Finding> check(RoomDesign design, RuleSettings settings, BooleanSupplier cancelled) {
		Set<String> profiles = new HashSet<>(RuleProfiles.of(design.home()));
		profiles.addAll(settings.profiles());
		List<Finding> found = new ArrayList<>();
		for (RuleDescriptor rule : rules) {
			if (cancelled.getAsBoolean()) {
				throw new OperationCanceledException();
			}
			if (rule.appliesTo(profiles)) {
				found.addAll(run(rule, design, settings, cancelled));
			}
		}
		found.sort(Comparator.comparing(Finding::severity).thenComparing(finding -> place(finding, design)));
		return List.copyOf(found);
	}

	private static List<Finding> run(RuleDescriptor rule, RoomDesign design, RuleSettings settings,
			BooleanSupplier cancelled) {
		RuleRun run = new RuleRun(rule, design, settings, cancelled);
		try {
			rule.check().get().check(run);
			return run.findings();
		} catch (OperationCanceledException stopped) {
			throw stopped;
		} catch (RuntimeException | LinkageError failure) {
			return List.of(failed(rule, design, failure));
		}
	}

	/** One broken rule must be seen, but never hide the findings of the others. */
	private static Finding failed(RuleDescriptor rule, RoomDesign design, Throwable failure) {
		Subject room = Subject.of(design.room());
		String message = NLS.bind(Messages.RuleEngine_Failed,
				new Object[] { rule.id(), rule.contributor(), failure.toString() });
		return new Finding(FindingKind.RULE_FAILED, rule.id(), Severity.WARNING, RuleRun.roomName(design), room.wall(),
				room.element(), room.id(), room.object(), message, rule.citation(), false);
	}

	private static int place(Finding finding, RoomDesign design) {
		for (int i = 0; i < design.room().getWalls().size(); i++) {
			if (finding.wall().equals(design.room().getWalls().get(i).getName())) {
				return i;
			}
		}
		return -1;
	}
}
