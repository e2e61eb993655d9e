// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.BooleanSupplier;

import org.eclipse.core.runtime.OperationCanceledException;
import org.eclipse.osgi.util.NLS;

import wainscribe.layout.RoomDesign;
import wainscribe.model.length.Length;
import wainscribe.model.length.LengthFormat;
import wainscribe.model.length.LengthUnit;

/** One run of one rule on one room; used once and thrown away. */
final class RuleRun implements RuleContext {

	private static final Length TRADE_STEP = Length.ofInches(1, 8);
	private static final Length TRADE_ROUNDING = Length.ofMillimetres(1).dividedBy(2);

	private final RuleDescriptor rule;
	private final RoomDesign design;
	private final RuleSettings settings;
	private final BooleanSupplier cancelled;
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
		return RuleOption.asLength(value(option));
	}

	@Override
	public BigDecimal number(String option) {
		return RuleOption.asNumber(value(option));
	}

	@Override
	public String say(String pattern, Object... figures) {
		return NLS.bind(pattern, Arrays.stream(figures).map(this::shown).toArray());
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

	private String shown(Object figure) {
		return figure instanceof Length length ? LengthFormat.asShown(inTradeFigure(length), unit()) : String.valueOf(figure);
	}

	/** A figure of the rule itself is given as a carpenter says it: 25 mm are an inch. Figures found stay as they are. */
	private Length inTradeFigure(Length length) {
		if (unit() != LengthUnit.INCH || rule.options().stream().noneMatch(option -> isFigure(option, length))) {
			return length;
		}
		Length rounded = length.roundedTo(TRADE_STEP);
		return rounded.minus(length).abs().isMoreThan(TRADE_ROUNDING) ? length : rounded;
	}

	private boolean isFigure(RuleOption option, Length length) {
		String value = value(option.key());
		return value.matches(".*\\D") && RuleOption.asLength(value).equals(length); //$NON-NLS-1$
	}

	private LengthUnit unit() {
		return design.brief().units();
	}
}
