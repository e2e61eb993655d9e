// SPDX-License-Identifier: EPL-2.0
package wainscribe.takeoff;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Objects;

import wainscribe.model.length.LengthUnit;

/**
 * Writes amounts to buy as the shop of the home sells them: feet in inch homes, with gallons beside litres; metric elsewhere.
 *
 * @param unit unit of the home
 */
public record AmountText(LengthUnit unit) {

	private static final int PLACES = 2;
	/** Exact by the international foot (NIST SP 811). */
	private static final BigDecimal METRES_PER_FOOT = new BigDecimal("0.3048"); //$NON-NLS-1$
	/** Litres in one US gallon, exact (NIST SP 811). */
	private static final BigDecimal LITRES_PER_GALLON = new BigDecimal("3.785411784"); //$NON-NLS-1$

	/** Refuses null. */
	public AmountText {
		Objects.requireNonNull(unit);
	}

	/**
	 * Writes an amount with at most two decimals.
	 *
	 * @param amount  how much
	 * @param measure its unit in quantities, {@code m}, {@code L} or another that is written as it is
	 */
	public String of(BigDecimal amount, String measure) {
		if (unit == LengthUnit.INCH && measure.equals("m")) { //$NON-NLS-1$
			return rounded(amount.divide(METRES_PER_FOOT, PLACES, RoundingMode.HALF_UP)) + " ft"; //$NON-NLS-1$
		}
		String text = rounded(amount) + ' ' + measure;
		if (unit == LengthUnit.INCH && measure.equals("L")) { //$NON-NLS-1$
			return text + " (" + rounded(amount.divide(LITRES_PER_GALLON, PLACES, RoundingMode.HALF_UP)) + " gal)"; //$NON-NLS-1$ //$NON-NLS-2$
		}
		return text;
	}

	private static String rounded(BigDecimal amount) {
		return Amounts.plain(amount.setScale(PLACES, RoundingMode.HALF_UP));
	}
}
