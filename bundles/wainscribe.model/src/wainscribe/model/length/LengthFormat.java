// SPDX-License-Identifier: EPL-2.0
package wainscribe.model.length;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Writes lengths as people write them.
 * <p>
 * Two forms: {@link #asStored(Length)} is exact and carries its unit, so {@link LengthParser} reads the very same length
 * back; {@link #asShown(Length, LengthUnit)} is for the eye: exact down to 1/64 in or 1/10 mm, and what is finer rounded once to
 * the nearest 1/16 in or 1/10 mm and marked with a tilde.
 */
public final class LengthFormat {

	private static final int SIXTY_FOURTHS_PER_INCH = 64;
	private static final int INCHES_PER_FOOT = 12;

	private LengthFormat() {
	}

	/**
	 * Writes the exact length with its unit: {@code 72 1/2"} if it is a whole number of 1/64 in, else {@code 1842 mm}.
	 *
	 * @param length any length
	 * @return text that {@link LengthParser} reads as the same length whatever its default unit
	 */
	public static String asStored(Length length) {
		if (length.units() % Length.UNITS_PER_SIXTY_FOURTH == 0 && length.units() != 0) {
			return inches(length.units() / Length.UNITS_PER_SIXTY_FOURTH) + '"';
		}
		return length.toMillimetres().toPlainString() + " mm"; //$NON-NLS-1$
	}

	/**
	 * Writes the exact length for a file whose bare numbers are in the given unit.
	 *
	 * @return a bare number where the unit holds it exactly ({@code 72 1/2}, {@code 1842}), else as {@link #asStored}
	 */
	public static String asMeasured(Length length, LengthUnit unit) {
		if (unit == LengthUnit.INCH && length.units() % Length.UNITS_PER_SIXTY_FOURTH == 0) {
			return inches(length.units() / Length.UNITS_PER_SIXTY_FOURTH);
		}
		BigDecimal millimetres = length.toMillimetres();
		return unit == LengthUnit.MILLIMETRE ? millimetres.toPlainString() : millimetres.toPlainString() + "mm"; //$NON-NLS-1$
	}

	/**
	 * Writes a length for a screen or a drawing, with its unit: {@code 6' 1 1/2"}, {@code 16 3/8"}, {@code 1842 mm}.
	 *
	 * @return the exact length if it is a whole number of 1/64 in or 0.1 mm, else the nearest 1/16 in or 0.1 mm with a leading
	 *         {@code ~}
	 */
	public static String asShown(Length length, LengthUnit unit) {
		return unit == LengthUnit.INCH ? feetAndInches(length) : millimetres(length);
	}

	/**
	 * Writes a length rounded once to the tape of the unit (1/16 in or 1 mm), without a tilde.
	 *
	 * @return the nearest mark a tape has, with its unit
	 */
	public static String asTapeMark(Length length, LengthUnit unit) {
		return asShown(length.roundedTo(unit.tapeMark()), unit);
	}

	private static String millimetres(Length length) {
		BigDecimal exact = length.toMillimetres();
		BigDecimal rounded = exact.setScale(1, RoundingMode.HALF_UP).stripTrailingZeros();
		String text = (rounded.scale() < 0 ? rounded.setScale(0) : rounded).toPlainString() + " mm"; //$NON-NLS-1$
		return rounded.compareTo(exact) == 0 ? text : "~" + text; //$NON-NLS-1$
	}

	private static String feetAndInches(Length length) {
		boolean exact = length.units() % Length.UNITS_PER_SIXTY_FOURTH == 0;
		Length rounded = exact ? length.abs() : length.abs().roundedTo(LengthUnit.INCH.tapeMark());
		long sixtyFourths = rounded.units() / Length.UNITS_PER_SIXTY_FOURTH;
		long feet = sixtyFourths / (SIXTY_FOURTHS_PER_INCH * INCHES_PER_FOOT);
		long rest = sixtyFourths % (SIXTY_FOURTHS_PER_INCH * INCHES_PER_FOOT);
		StringBuilder text = new StringBuilder();
		text.append(exact ? "" : "~"); //$NON-NLS-1$ //$NON-NLS-2$
		text.append(length.signum() < 0 ? "-" : ""); //$NON-NLS-1$ //$NON-NLS-2$
		if (feet > 0) {
			text.append(feet).append('\'');
			text.append(rest == 0 ? "" : " "); //$NON-NLS-1$ //$NON-NLS-2$
		}
		if (rest > 0 || feet == 0) {
			text.append(inches(rest)).append('"');
		}
		return text.toString();
	}

	private static String inches(long sixtyFourths) {
		long whole = Math.abs(sixtyFourths) / SIXTY_FOURTHS_PER_INCH;
		long numerator = Math.abs(sixtyFourths) % SIXTY_FOURTHS_PER_INCH;
		String sign = sixtyFourths < 0 ? "-" : ""; //$NON-NLS-1$ //$NON-NLS-2$
		if (numerator == 0) {
			return sign + whole;
		}
		int shift = Long.numberOfTrailingZeros(numerator);
		String fraction = (numerator >> shift) + "/" + (SIXTY_FOURTHS_PER_INCH >> shift); //$NON-NLS-1$
		return sign + (whole == 0 ? fraction : whole + " " + fraction); //$NON-NLS-1$
	}
}
