// SPDX-License-Identifier: EPL-2.0
package wainscribe.model.length;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;

/**
 * An exact length, or an exact signed distance.
 * <p>
 * The value is a whole number of units of 1/8000 mm (0.000125 mm), the largest unit of which both 1/64 in (3175 units)
 * and 1/1000 mm (8 units) are whole multiples. The inch is exactly 25.4 mm (international yard and pound agreement,
 * 1959; NIST SP 811). Arithmetic is exact and throws {@link ArithmeticException} on overflow; there is no floating point.
 *
 * @param units the value in units of 1/8000 mm
 * @see LengthFormat
 * @see LengthParser
 */
public record Length(long units) implements Comparable<Length> {

	/** Units in one millimetre. */
	public static final long UNITS_PER_MILLIMETRE = 8_000;
	/** Units in one inch. */
	public static final long UNITS_PER_INCH = 203_200;
	/** Units in 1/64 inch, the finest mark of an inch tape. */
	public static final long UNITS_PER_SIXTY_FOURTH = 3_175;
	/** The length of nothing. */
	public static final Length ZERO = new Length(0);

	private static final int EXACT_MILLIMETRE_SCALE = 6;

	/**
	 * Returns a whole number of millimetres.
	 *
	 * @param millimetres any whole number
	 * @return that length
	 */
	public static Length ofMillimetres(long millimetres) {
		return new Length(Math.multiplyExact(millimetres, UNITS_PER_MILLIMETRE));
	}

	/**
	 * Returns the length of exactly the given millimetres.
	 *
	 * @param millimetres a multiple of 0.000125
	 * @return that length
	 * @throws ArithmeticException if the value is no whole number of units
	 */
	public static Length ofMillimetres(BigDecimal millimetres) {
		return new Length(millimetres.multiply(BigDecimal.valueOf(UNITS_PER_MILLIMETRE)).longValueExact());
	}

	/**
	 * Returns a whole number of inches.
	 *
	 * @param inches any whole number
	 * @return that length
	 */
	public static Length ofInches(long inches) {
		return new Length(Math.multiplyExact(inches, UNITS_PER_INCH));
	}

	/**
	 * Returns a fraction of an inch.
	 *
	 * @param numerator   upper number
	 * @param denominator lower number, not 0
	 * @return that length
	 * @throws ArithmeticException if the value is no whole number of units
	 */
	public static Length ofInches(long numerator, long denominator) {
		BigInteger[] parts = BigInteger.valueOf(numerator).multiply(BigInteger.valueOf(UNITS_PER_INCH))
				.divideAndRemainder(BigInteger.valueOf(denominator));
		if (parts[1].signum() != 0) {
			throw new ArithmeticException(numerator + "/" + denominator + " in is no whole number of 1/8000 mm"); //$NON-NLS-1$ //$NON-NLS-2$
		}
		return new Length(parts[0].longValueExact());
	}

	/**
	 * Returns the exact value in millimetres, without trailing zeros.
	 *
	 * @return millimetres, at most six decimals
	 */
	public BigDecimal toMillimetres() {
		BigDecimal value = BigDecimal.valueOf(units).divide(BigDecimal.valueOf(UNITS_PER_MILLIMETRE),
				EXACT_MILLIMETRE_SCALE, RoundingMode.UNNECESSARY).stripTrailingZeros();
		return value.scale() < 0 ? value.setScale(0) : value;
	}

	/**
	 * Returns the value in millimetres for painting and physics, where floating point is allowed.
	 *
	 * @return millimetres, rounded to the nearest double
	 */
	public double approximateMillimetres() {
		return (double) units / UNITS_PER_MILLIMETRE;
	}

	/** Returns this plus the other. */
	public Length plus(Length other) {
		return new Length(Math.addExact(units, other.units));
	}

	/** Returns this less the other. */
	public Length minus(Length other) {
		return new Length(Math.subtractExact(units, other.units));
	}

	/** Returns this taken the given number of times. */
	public Length times(long factor) {
		return new Length(Math.multiplyExact(units, factor));
	}

	/**
	 * Returns the whole part of a division, rounded down; the rest is what {@link #remainder(long)} returns.
	 *
	 * @param divisor above 0
	 */
	public Length dividedBy(long divisor) {
		return new Length(Math.floorDiv(units, divisor));
	}

	/** Returns the rest that {@link #dividedBy(long)} leaves, from 0 to under {@code divisor} units. */
	public long remainder(long divisor) {
		return Math.floorMod(units, divisor);
	}

	/** Returns the length with the other sign. */
	public Length negated() {
		return new Length(Math.negateExact(units));
	}

	/** Returns the length without its sign. */
	public Length abs() {
		return units < 0 ? negated() : this;
	}

	/** Returns the shorter of two lengths. */
	public Length min(Length other) {
		return units <= other.units ? this : other;
	}

	/** Returns the longer of two lengths. */
	public Length max(Length other) {
		return units >= other.units ? this : other;
	}

	/** Returns -1, 0 or 1 as the length is below, at or above zero. */
	public int signum() {
		return Long.signum(units);
	}

	/** Tells whether this is shorter than the other. */
	public boolean isLessThan(Length other) {
		return units < other.units;
	}

	/** Tells whether this is longer than the other. */
	public boolean isMoreThan(Length other) {
		return units > other.units;
	}

	/** Tells whether this is a whole number of the given step. */
	public boolean isMultipleOf(Length step) {
		return units % step.units == 0;
	}

	/**
	 * Rounds once to a tape mark, halves away from zero.
	 *
	 * @param step distance between marks, above zero
	 * @return the nearest multiple of {@code step}
	 */
	public Length roundedTo(Length step) {
		return new Length(BigDecimal.valueOf(units).divide(BigDecimal.valueOf(step.units), 0, RoundingMode.HALF_UP)
				.longValueExact() * step.units);
	}

	@Override
	public int compareTo(Length other) {
		return Long.compare(units, other.units);
	}

	/** Returns the exact length as {@link LengthFormat#asStored(Length)} writes it. */
	@Override
	public String toString() {
		return LengthFormat.asStored(this);
	}
}
