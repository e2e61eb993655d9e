// SPDX-License-Identifier: EPL-2.0
package wainscribe.model.length;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;

/** Lengths against the exact definitions of the units. */
class LengthTest {

	private static final long FAR = 1_600_000_000_000L;

	/** Source: NIST SP 811 (2008) appendix B; international yard and pound agreement, 1959. All exact. */
	@ParameterizedTest
	@CsvSource({ "1, 1, 25.4", "12, 1, 304.8", "36, 1, 914.4", "1, 64, 0.396875", "1, 32, 0.79375", "1, 16, 1.5875" })
	void inchesAreExactMillimetres(long numerator, long denominator, BigDecimal millimetres) {
		assertEquals(millimetres, Length.ofInches(numerator, denominator).toMillimetres());
		assertEquals(Length.ofInches(numerator, denominator), Length.ofMillimetres(millimetres));
	}

	/** The largest length of which both 1/64 in (3175 of it) and 0.001 mm (8 of it) are whole multiples. */
	@Test
	void oneUnitDividesBothTapes() {
		assertEquals(new BigDecimal("0.000125"), new Length(1).toMillimetres());
		assertEquals(new Length(3175), Length.ofInches(1, 64));
		assertEquals(new Length(8), Length.ofMillimetres(new BigDecimal("0.001")));
	}

	@Test
	void refusesWhatIsNoWholeUnit() {
		assertThrows(ArithmeticException.class, () -> Length.ofInches(1, 3));
		assertThrows(ArithmeticException.class, () -> Length.ofInches(1, 0));
		assertThrows(ArithmeticException.class, () -> Length.ofMillimetres(new BigDecimal("0.0001")));
		assertThrows(ArithmeticException.class, () -> new Length(Long.MAX_VALUE).plus(new Length(1)));
		assertThrows(ArithmeticException.class, () -> Length.ofMillimetres(Long.MAX_VALUE));
	}

	@Test
	void roundsToTheNearestMarkHalvesAwayFromZero() {
		Length mark = LengthUnit.INCH.tapeMark();
		assertEquals(Length.ofInches(73, 16), Length.ofInches(145, 32).roundedTo(mark));
		assertEquals(Length.ofInches(-73, 16), Length.ofInches(-145, 32).roundedTo(mark));
		assertEquals(Length.ofInches(72, 16), Length.ofInches(289, 64).roundedTo(mark));
	}

	@Test
	void comparesAndDividesBelowZeroToo() {
		Length minus = new Length(-7);
		assertEquals(new Length(-3), minus.dividedBy(3));
		assertEquals(2, minus.remainder(3));
		assertTrue(minus.isLessThan(Length.ZERO));
		assertFalse(minus.isMoreThan(Length.ZERO));
		assertEquals(new Length(7), minus.abs());
		assertEquals(minus, minus.min(Length.ZERO));
		assertEquals(Length.ZERO, minus.max(Length.ZERO));
	}

	@Property
	void divisionLosesNothing(@ForAll @LongRange(min = -FAR, max = FAR) long units, @ForAll @IntRange(min = 1, max = 500) int divisor) {
		Length length = new Length(units);
		assertEquals(length, length.dividedBy(divisor).times(divisor).plus(new Length(length.remainder(divisor))));
		assertTrue(length.remainder(divisor) >= 0 && length.remainder(divisor) < divisor);
	}

	@Property
	void millimetresAreExact(@ForAll @LongRange(min = -FAR, max = FAR) long units) {
		assertEquals(new Length(units), Length.ofMillimetres(new Length(units).toMillimetres()));
	}

	@Property
	void roundingIsNeverOffByMoreThanHalfAMark(@ForAll @LongRange(min = -FAR, max = FAR) long units, @ForAll LengthUnit unit) {
		Length rounded = new Length(units).roundedTo(unit.tapeMark());
		assertTrue(rounded.isMultipleOf(unit.tapeMark()));
		assertTrue(2 * rounded.minus(new Length(units)).abs().units() <= unit.tapeMark().units());
	}
}
