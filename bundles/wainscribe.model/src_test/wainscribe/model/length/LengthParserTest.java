// SPDX-License-Identifier: EPL-2.0
package wainscribe.model.length;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** The spellings of carpenters; values by the definitions of inch and foot (NIST SP 811). */
class LengthParserTest {

	private final LengthParser inches = new LengthParser(LengthUnit.INCH);
	private final LengthParser millimetres = new LengthParser(LengthUnit.MILLIMETRE);

	/** Numerators over 64 of an inch. */
	@ParameterizedTest
	@CsvSource(delimiter = '~', quoteCharacter = '`', value = { "72 1/2 ~ 4640", "72-1/2 ~ 4640", "72-1/2\" ~ 4640", "6' 1/2\" ~ 4640", "6'-1/2\" ~ 4640",
			"6' ½ ~ 4640", "6'½\" ~ 4640", "72½ ~ 4640", "6' 1 1/2\" ~ 4704", "6'1 1/2 ~ 4704", "6ft 1.5in ~ 4704", "6 feet 1 1/2 inches ~ 4704",
			"6′ 1 1/2″ ~ 4704", "6’ 1 1/2” ~ 4704", "73.5 ~ 4704", "1 foot ~ 768", "24 + 3/8 ~ 1560", "24 - 3/8 ~ 1512", "24-3/8 ~ 1560",
			"6' - 1/2\" ~ 4576", "3/64 ~ 3", ".5 ~ 32", "0 ~ 0", "-1/2 ~ -32", "−1/2 ~ -32", "-6' 1 1/2\" ~ -4704", "12 + 25.4mm ~ 832",
			"72 1 ⁄ 2 ~ 4640", "72'' ~ 4608", "  7  ~ 448" })
	void readsInches(String text, long sixtyFourths) {
		assertEquals(new Length(sixtyFourths * Length.UNITS_PER_SIXTY_FOURTH), inches.parse(text));
	}

	@ParameterizedTest
	@CsvSource(delimiter = '~', quoteCharacter = '`', value = { "1850 ~ 1850", "1850mm ~ 1850", "1850 mm ~ 1850", "1.85 m ~ 1850", "1.85M ~ 1850", "185cm ~ 1850", "184.2cm ~ 1842",
			"1 m + 50 mm ~ 1050", "2 - 5 ~ -3", "1842.001 ~ 1842.001", "1\" ~ 25.4", "1ft ~ 304.8", "1' 1\" ~ 330.2" })
	void readsMillimetres(String text, String expected) {
		assertEquals(Length.ofMillimetres(new java.math.BigDecimal(expected)), millimetres.parse(text));
	}

	@ParameterizedTest
	@ValueSource(strings = { "", " ", "abc", "72 1/", "/2", "72 1/2 1/2", "1 2 3", "72 1/2x", "6' 6'", "1mm 2mm", "1,5", "72..5", "1e3", "NaN", "=1+2", "0x10", "1 yard", "72;",
			"12\" 6'", "--1", "1 +", "1/2/3", "¾½", "1m5" })
	void refusesWhatIsNoLength(String text) {
		LengthSyntaxException refused = assertThrows(LengthSyntaxException.class, () -> inches.parse(text));
		assertEquals('"' + text + "\": expected a length such as 72 1/2 or 1842mm", refused.getMessage());
		assertEquals("expected a length such as 72 1/2 or 1842mm", refused.reason());
	}

	@Test
	void refusesAFractionOverZero() {
		LengthSyntaxException refused = assertThrows(LengthSyntaxException.class, () -> inches.parse("72 1/0"));
		assertEquals("\"72 1/0\": a fraction over zero; expected a length such as 72 1/2", refused.getMessage());
	}

	@Test
	void refusesWhatNoTapeHasUnlessAskedForTheNearest() {
		LengthSyntaxException refused = assertThrows(LengthSyntaxException.class, () -> inches.parse("72 1/3"));
		assertEquals("\"72 1/3\": no tape has this mark; expected a multiple of 1/64 in or 0.001 mm (nearest is 72 21/64\")", refused.getMessage());
		LengthParser.Reading reading = inches.read("72 1/3");
		assertEquals(Length.ofInches(72 * 64 + 21, 64), reading.nearest());
		assertFalse(reading.isExact());
		assertEquals(Length.ofMillimetres(new java.math.BigDecimal("0.333")), millimetres.read("1/3").nearest());
		assertTrue(inches.read("72 1/2").isExact());
	}

	@Test
	void staysQuickAndOnOneLineWithHugeText() {
		String huge = "1\n".repeat(100_000);
		LengthSyntaxException refused = assertThrows(LengthSyntaxException.class, () -> inches.parse(huge));
		assertTrue(refused.getMessage().length() < 200 && refused.getMessage().lines().count() == 1);
		assertThrows(LengthSyntaxException.class, () -> inches.parse("999999999999 m + 999999999999 m"));
	}

	@Property
	void neverFailsOtherwiseThanByRefusing(@ForAll String text) {
		try {
			inches.read(text);
		} catch (LengthSyntaxException refused) {
			assertTrue(refused.getMessage().startsWith("\""));
		}
	}
}
