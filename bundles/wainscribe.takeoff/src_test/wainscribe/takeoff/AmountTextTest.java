// SPDX-License-Identifier: EPL-2.0
package wainscribe.takeoff;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import wainscribe.model.length.LengthUnit;

class AmountTextTest {

	/** Foot and gallon by NIST SP 811: 3.6576 m are 12 ft, 0.946352946 L are a quarter of a gallon. */
	@ParameterizedTest
	@CsvSource({ "3.6576,m,12 ft,3.66 m", "0.946352946,L,0.95 L (0.25 gal),0.95 L", "2.4,m,7.87 ft,2.4 m", "3,each,3 each,3 each" })
	void amountsAreWrittenAsTheShopSellsThem(BigDecimal amount, String measure, String inches, String metric) {
		assertEquals(inches, new AmountText(LengthUnit.INCH).of(amount, measure));
		assertEquals(metric, new AmountText(LengthUnit.MILLIMETRE).of(amount, measure));
	}
}
