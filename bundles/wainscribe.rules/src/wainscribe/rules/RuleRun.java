// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.stream.Collectors;

import org.eclipse.core.runtime.OperationCanceledException;
import org.eclipse.osgi.util.NLS;

import wainscribe.layout.RoomDesign;
import wainscribe.model.length.Length;
import wainscribe.model.length.LengthUnit;

/** One run of one rule on one room; used once and thrown away. */
final class RuleRun implements RuleContext {

	private final RuleDescriptor rule;
	private final RoomDesign design;
	private final RuleSettings settings;
	private final BooleanSupplier cancelled;
	private final Map<String, Length> lengths = new HashMap<>();
	private final List<Finding> findings = new ArrayList<>();

	RuleRun(RuleDescriptor rule, RoomDesign design, RuleSettings settings, BooleanSupplier cancelled) {
		this.rule = rule;
		this.design = design;
		this.settings = settings;
		this.cancelled = cancelled;
	}

	static String roomName(RoomDesign design) {
		return design.room().getName() == null ? "" : design.room().getName(); //$NON-NLS-1$
	}

	List<Finding> findings() {
		return List.copyOf(findings);
	}

	@Override
	public RoomDesign design() {
		return design;
	}

	@Override
	public Severity severity() {
		return rule.severity();
	}

	@Override
	public Length length(String option) {
		return lengths.computeIfAbsent(option, key -> RuleOption.asLength(value(key)));
	}

	@Override
	public BigDecimal number(String option) {
		return RuleOption.asNumber(value(option));
	}

	@Override
	public String say(String pattern, Object... figures) {
		Object[] texts = new FigureText(unit(), ownLengths()).of(figures);
		String sentence = pattern;
		for (int i = 0; i < texts.length; i++) {
			sentence = figures[i] instanceof String name ? RepeatedWord.without(sentence, i, name) : sentence;
		}
		return NLS.bind(sentence, texts);
	}

	@Override
	public void report(Severity severity, Subject subject, String pattern, Object... figures) {
		findings.add(finding(FindingKind.BROKEN, severity, subject, say(pattern, figures)));
	}

	@Override
	public void ask(Subject subject, String pattern, Object... figures) {
		findings.add(finding(FindingKind.NOT_MEASURED, rule.severity() == Severity.ERROR ? Severity.WARNING : rule.severity(),
				subject, say(pattern, figures)));
	}

	@Override
	public void stopIfCancelled() {
		if (cancelled.getAsBoolean()) {
			throw new OperationCanceledException();
		}
	}

	private Finding finding(FindingKind kind, Severity severity, Subject subject, String message) {
		return new Finding(kind, rule.id(), severity, roomName(design), subject.wall(), subject.element(), subject.id(),
				subject.object(), message, rule.citation(), false);
	}

	private String value(String key) {
		RuleOption option = rule.option(key).orElseThrow(
				() -> new IllegalArgumentException("rule " + rule.id() + " has no option " + key)); //$NON-NLS-1$ //$NON-NLS-2$
		return settings.changed(rule.id(), key).orElse(option.defaultIn(unit()));
	}

	private Set<Length> ownLengths() {
		return rule.options().stream().map(option -> value(option.key())).filter(value -> value.matches(".*\\D")) //$NON-NLS-1$
				.map(RuleOption::asLength).collect(Collectors.toSet());
	}

	private LengthUnit unit() {
		return design.brief().units();
	}
}
