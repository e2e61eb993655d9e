// SPDX-License-Identifier: EPL-2.0
package wainscribe.model.length;

import java.math.BigDecimal;
import java.math.BigInteger;

/** An exact fraction while a typed length is added up; the denominator is above zero. */
record Ratio(BigInteger numerator, BigInteger denominator) {

	static final Ratio ZERO = new Ratio(BigInteger.ZERO, BigInteger.ONE);

	static Ratio of(BigDecimal decimal) {
		return new Ratio(decimal.unscaledValue(), BigInteger.TEN.pow(decimal.scale()));
	}

	Ratio plus(Ratio other) {
		return new Ratio(numerator.multiply(other.denominator).add(other.numerator.multiply(denominator)),
				denominator.multiply(other.denominator));
	}

	Ratio minus(Ratio other) {
		return plus(new Ratio(other.numerator.negate(), other.denominator));
	}

	Ratio times(BigInteger factor) {
		return new Ratio(numerator.multiply(factor), denominator);
	}

	Ratio dividedBy(BigInteger divisor) {
		return new Ratio(numerator, denominator.multiply(divisor));
	}

	boolean isWhole() {
		return numerator.mod(denominator).signum() == 0;
	}

	/** Returns the nearest whole number, halves up. */
	BigInteger nearest() {
		BigInteger two = BigInteger.TWO;
		BigInteger[] parts = numerator.multiply(two).add(denominator).divideAndRemainder(denominator.multiply(two));
		return parts[1].signum() < 0 ? parts[0].subtract(BigInteger.ONE) : parts[0];
	}
}
