// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing.svg;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Writes numbers of SVG: at most three decimals, a point whatever the locale, no exponent. */
final class SvgNumber {

	private static final int PLACES = 3;

	private SvgNumber() {
	}

	static String of(double value) {
		BigDecimal rounded = BigDecimal.valueOf(value).setScale(PLACES, RoundingMode.HALF_EVEN).stripTrailingZeros();
		return rounded.signum() == 0 ? "0" : rounded.toPlainString();
	}
}
