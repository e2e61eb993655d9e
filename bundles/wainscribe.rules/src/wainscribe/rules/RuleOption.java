// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules;

import java.math.BigDecimal;
import java.util.Objects;

import wainscribe.model.length.Length;
import wainscribe.model.length.LengthParser;
import wainscribe.model.length.LengthUnit;

/**
 * A figure of a rule that the user may change.
 *
 * @param key         name by which the check asks for it
 * @param label       what is shown
 * @param metric      default in a metric home: a length with its unit, or a bare number
 * @param inch        default in a home measured in inches: the trade's own inch figure, so that a rule never asks for half a
 *                    millimetre more than a tape shows; the same as {@code metric} where the figure is no length
 */
public record RuleOption(String key, String label, String metric, String inch) {

	/** Refuses nulls. */
	public RuleOption {
		Objects.requireNonNull(key);
		Objects.requireNonNull(label);
		Objects.requireNonNull(metric);
		Objects.requireNonNull(inch);
	}

	/** Returns the default in a home of the given unit. */
	public String defaultIn(LengthUnit unit) {
		return unit == LengthUnit.INCH ? inch : metric;
	}

	/**
	 * Reads a value as a length.
	 *
	 * @throws IllegalArgumentException if it is none
	 */
	static Length asLength(String value) {
		return new LengthParser(LengthUnit.MILLIMETRE).parse(value);
	}

	/**
	 * Reads a value as a number.
	 *
	 * @throws NumberFormatException if it is none
	 */
	static BigDecimal asNumber(String value) {
		return new BigDecimal(value);
	}
}
