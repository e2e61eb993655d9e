// SPDX-License-Identifier: EPL-2.0
package wainscribe.takeoff;

import java.math.BigDecimal;
import java.math.RoundingMode;

import wainscribe.model.length.Length;
import wainscribe.model.length.LengthUnit;

/** Turns lengths into metres and writes amounts as they stand in formulas; inch homes see feet and gallons beside them. */
record Amounts(LengthUnit unit) {

	/** Litres in one US gallon, exact (NIST SP 811). */
	private static final BigDecimal LITRES_PER_GALLON = new BigDecimal("3.785411784"); //$NON-NLS-1$
	private static final BigDecimal METRES_PER_FOOT = new BigDecimal("0.3048"); //$NON-NLS-1$
	private static final int TO_METRES = 3;
	private static final int SHOWN = 2;

	/** Returns the exact metres. */
	static BigDecimal metres(Length length) {
		return length.toMillimetres().movePointLeft(TO_METRES);
	}

	/** Returns a number with two decimals. */
	static String number(BigDecimal value) {
		return value.setScale(SHOWN, RoundingMode.HALF_UP).toPlainString();
	}

	/** Returns a number that is going to be rounded up to a whole one, with two decimals, themselves rounded up. */
	static String beforeRounding(BigDecimal value) {
		return value.setScale(SHOWN, RoundingMode.CEILING).toPlainString();
	}

	/** Returns a number as it is, without noughts at its end. */
	static String plain(BigDecimal value) {
		BigDecimal stripped = value.stripTrailingZeros();
		return (stripped.scale() < 0 ? stripped.setScale(0) : stripped).toPlainString();
	}

	String metresShown(BigDecimal metres) {
		return number(metres) + " m" + inOther(metres, METRES_PER_FOOT, "ft"); //$NON-NLS-1$ //$NON-NLS-2$
	}

	String areaShown(BigDecimal squareMetres) {
		return number(squareMetres) + " m2" + inOther(squareMetres, METRES_PER_FOOT.multiply(METRES_PER_FOOT), "ft2"); //$NON-NLS-1$ //$NON-NLS-2$
	}

	String litresShown(BigDecimal litres) {
		return number(litres) + " L" + inOther(litres, LITRES_PER_GALLON, "gal"); //$NON-NLS-1$ //$NON-NLS-2$
	}

	private String inOther(BigDecimal value, BigDecimal factor, String symbol) {
		if (unit != LengthUnit.INCH) {
			return ""; //$NON-NLS-1$
		}
		return " (" + value.divide(factor, SHOWN, RoundingMode.HALF_UP).toPlainString() + ' ' + symbol + ')'; //$NON-NLS-1$
	}
}
