// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile.properties;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;

import org.junit.jupiter.api.Test;

import wainscribe.model.length.Length;
import wainscribe.model.length.LengthUnit;
import wainscribe.profile.SupplyLength;

/** Supply lengths are typed in one line, with or without prices. */
class SupplyTextTest {

	private final SupplyText text = new SupplyText(LengthUnit.INCH);

	@Test
	void lengthsWithAndWithoutPrices() {
		List<SupplyLength> supply = text.read("8' at 12.40; 12'@18, 2400 mm");
		assertEquals(List.of(new SupplyLength(Length.ofInches(96), new BigDecimal("12.40")),
				new SupplyLength(Length.ofInches(144), new BigDecimal("18")), new SupplyLength(Length.ofMillimetres(2400), null)), supply);
		assertEquals(supply, text.read(text.shown(supply)));
	}

	@Test
	void whatIsNoneIsRefusedInOneLine() {
		assertTrue(assertThrows(IllegalArgumentException.class, () -> text.read("8' at cheap")).getMessage().startsWith("\"cheap\": expected a price"));
		assertTrue(assertThrows(IllegalArgumentException.class, () -> text.read("8' at -1")).getMessage().startsWith("\"-1\": expected a price"));
		assertTrue(assertThrows(IllegalArgumentException.class, () -> text.read("long")).getMessage().startsWith("\"long\": expected a length"));
		assertTrue(assertThrows(IllegalArgumentException.class, () -> text.read("0")).getMessage().contains("above zero"));
	}
}
