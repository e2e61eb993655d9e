// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules;

import java.util.Arrays;
import java.util.Set;

import wainscribe.model.length.Length;
import wainscribe.model.length.LengthFormat;
import wainscribe.model.length.LengthUnit;

/**
 * Writes the figures of one message so that a person can compare them.
 *
 * @param unit unit of the home
 * @param own  lengths the rule itself asks for
 */
record FigureText(LengthUnit unit, Set<Length> own) {

	private static final Length TRADE_STEP = Length.ofInches(1, 8);
	private static final Length TRADE_ROUNDING = Length.ofMillimetres(1).dividedBy(2);
	private static final String ROUNDED = "~"; //$NON-NLS-1$

	/** Returns the texts of the figures of a message: lengths in the home's unit, all else as it is. */
	Object[] of(Object... figures) {
		return Arrays.stream(figures)
				.map(figure -> figure instanceof Length length ? of(length, figures) : String.valueOf(figure)).toArray();
	}

	/** A figure found that is shown like another one, because both are rounded, says by how little it differs. */
	private String of(Length length, Object[] figures) {
		String shown = shown(length);
		boolean alike = Arrays.stream(figures).anyMatch(other -> other instanceof Length wanted && !wanted.equals(length)
				&& shown(wanted).replace(ROUNDED, "").equals(shown.replace(ROUNDED, ""))); //$NON-NLS-1$ //$NON-NLS-2$
		return alike && !own.contains(length) ? shown + " (" + length.toMillimetres().toPlainString() + " mm)" : shown; //$NON-NLS-1$ //$NON-NLS-2$
	}

	/** A figure of the rule itself is given as a carpenter says it: 25 mm are an inch. */
	private String shown(Length length) {
		Length rounded = length.roundedTo(TRADE_STEP);
		boolean trade = unit == LengthUnit.INCH && own.contains(length)
				&& !rounded.minus(length).abs().isMoreThan(TRADE_ROUNDING);
		return LengthFormat.asShown(trade ? rounded : length, unit);
	}
}
