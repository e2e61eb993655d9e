// SPDX-License-Identifier: EPL-2.0
package wainscribe.model.measure;

import java.math.BigDecimal;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * An amount in the unit in which it was written: {@code 20C}, {@code 50%}, {@code 80cfm}, {@code 12kg}.
 *
 * @param amount the number as written
 * @param unit   its unit
 */
public record Measure(BigDecimal amount, MeasureUnit unit) {

	private static final Pattern SYNTAX = Pattern.compile("(-?\\d{1,9}(?:\\.\\d{1,9})?)\\s*°?\\s*([A-Za-z%][A-Za-z0-9/]*)"); //$NON-NLS-1$

	/** Refuses nulls. */
	public Measure {
		Objects.requireNonNull(amount);
		Objects.requireNonNull(unit);
	}

	/**
	 * Reads an amount with its unit.
	 *
	 * @param text such as {@code 80cfm} or {@code 80 cfm}
	 * @throws IllegalArgumentException if it is none; the message quotes the text
	 */
	public static Measure parse(String text) {
		Matcher matcher = SYNTAX.matcher(text.strip());
		if (!matcher.matches()) {
			throw new IllegalArgumentException('"' + text + "\": expected an amount with its unit, such as 20C, 50%, 80cfm or 12kg"); //$NON-NLS-1$
		}
		MeasureUnit unit = MeasureUnit.ofSymbol(matcher.group(2)).orElseThrow(() -> new IllegalArgumentException(
				'"' + text + "\": unknown unit; expected C, F, %, cfm, l/s, m3/h, kg or lb")); //$NON-NLS-1$
		return new Measure(new BigDecimal(matcher.group(1)), unit);
	}

	/** Returns the amount in the base unit of its kind: degrees Celsius, per cent, litres a second or kilograms. */
	public BigDecimal inBaseUnit() {
		return unit.toBase(amount);
	}

	/** Returns the amount as {@link #parse(String)} reads it. */
	@Override
	public String toString() {
		return amount.toPlainString() + unit.symbol();
	}
}
