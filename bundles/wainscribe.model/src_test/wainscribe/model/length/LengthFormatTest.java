// SPDX-License-Identifier: EPL-2.0
package wainscribe.model.length;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;

/** What is written is read back as the very same length. */
class LengthFormatTest {

	private static final long FAR = 1_600_000_000_000L;

	@Property
	void storedLengthsComeBackWhateverTheDefaultUnit(@ForAll @LongRange(min = -FAR, max = FAR) long units, @ForAll LengthUnit unit) {
		assertEquals(new Length(units), new LengthParser(unit).parse(LengthFormat.asStored(new Length(units))));
	}

	@Property
	void measuredLengthsComeBackInTheirUnit(@ForAll @LongRange(min = -FAR, max = FAR) long units, @ForAll LengthUnit unit) {
		assertEquals(new Length(units), new LengthParser(unit).parse(LengthFormat.asMeasured(new Length(units), unit)));
	}

	@Property
	void shownMarksOfAnInchTapeComeBack(@ForAll @IntRange(min = -1_000_000, max = 1_000_000) int sixtyFourths) {
		Length length = new Length(sixtyFourths * Length.UNITS_PER_SIXTY_FOURTH);
		assertEquals(length, new LengthParser(LengthUnit.MILLIMETRE).parse(LengthFormat.asShown(length, LengthUnit.INCH)));
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', quoteCharacter = '`', value = { "72 1/2\" | 72 1/2\" | 72 1/2 | 6' 1/2\" | 1841.5 mm", "1842mm | 1842 mm | 1842mm | ~6' 1/2\" | 1842 mm",
			"0 | 0 mm | 0 | 0\" | 0 mm", "-3/8\" | -3/8\" | -3/8 | -3/8\" | ~-9.5 mm", "6' | 72\" | 72 | 6' | 1828.8 mm", "3/64\" | 3/64\" | 3/64 | 3/64\" | ~1.2 mm" })
	void writesAsPeopleWrite(String text, String stored, String measured, String feet, String metric) {
		Length length = new LengthParser(LengthUnit.MILLIMETRE).parse(text);
		assertEquals(stored, LengthFormat.asStored(length));
		assertEquals(measured, LengthFormat.asMeasured(length, LengthUnit.INCH));
		assertEquals(feet, LengthFormat.asShown(length, LengthUnit.INCH));
		assertEquals(metric, LengthFormat.asShown(length, LengthUnit.MILLIMETRE));
	}

	@ParameterizedTest
	@CsvSource(delimiter = ';', quoteCharacter = '`', value = { "72 33/64; 6' 1/2\"", "72 35/64; 6' 9/16\"", "71 63/64; 6'" })
	void tapeMarksAreSixteenths(String inches, String mark) {
		Length length = new LengthParser(LengthUnit.INCH).parse(inches);
		assertEquals(mark, LengthFormat.asTapeMark(length, LengthUnit.INCH));
	}
}
