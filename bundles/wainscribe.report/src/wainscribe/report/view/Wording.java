// SPDX-License-Identifier: EPL-2.0
package wainscribe.report.view;

import java.math.BigDecimal;
import java.util.Locale;

import org.eclipse.emf.common.util.Enumerator;

import wainscribe.model.length.Length;
import wainscribe.model.length.LengthFormat;
import wainscribe.model.length.LengthUnit;

/** Writes values of a home as its client reads them. */
record Wording(LengthUnit unit) {

	/** Returns a length with its unit, or a dash if it was not measured. */
	String length(Length length) {
		return length == null ? "\u2013" : LengthFormat.asShown(length, unit);
	}

	/** Returns a length rounded once to the tape, without the unit where that is millimetres. */
	String mark(Length length) {
		String text = LengthFormat.asTapeMark(length, unit);
		return unit == LengthUnit.MILLIMETRE ? text.replace(" mm", "") : text;
	}

	/** Returns the words of a model literal: {@code bath-with-shower} reads "bath with shower". */
	static String words(Enumerator literal) {
		return literal.getLiteral().replace('-', ' ');
	}

	/** Returns a text, empty for none. */
	static String text(String text) {
		return text == null ? "" : text.strip();
	}

	/** Returns a text with its first letter large. */
	static String sentence(String text) {
		return text.isEmpty() ? text : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
	}

	/** Returns a number without noughts at its end, empty for none. */
	static String number(BigDecimal number) {
		if (number == null) {
			return "";
		}
		BigDecimal plain = number.stripTrailingZeros();
		return (plain.scale() < 0 ? plain.setScale(0) : plain).toPlainString();
	}
}
