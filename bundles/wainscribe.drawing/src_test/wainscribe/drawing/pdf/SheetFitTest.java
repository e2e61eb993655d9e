// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import wainscribe.drawing.SampleRoom;
import wainscribe.drawing.elevation.ElevationDrawing;
import wainscribe.drawing.elevation.ElevationOptions;
import wainscribe.model.length.LengthUnit;
import wainscribe.profile.ProfileCatalogue;

class SheetFitTest {

	private static SheetFit fit(LengthUnit unit, long length, long height) {
		SampleRoom room = new SampleRoom(unit, length, height);
		ElevationDrawing elevation = new ElevationDrawing(new ProfileCatalogue(List.of()));
		return SheetFit.of(unit,
				scale -> elevation.draw(room.design(), room.wall(), ElevationOptions.of(room.home()).withScale(scale)));
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
			MILLIMETRE |  1000 | 1000 | 1:10          | A4
			MILLIMETRE |  3000 | 2400 | 1:20          | A4
			MILLIMETRE |  5500 | 2600 | 1:25          | A4
			MILLIMETRE |  7000 | 2600 | 1:20          | A3
			MILLIMETRE |  9000 | 2600 | 1:25          | A3
			MILLIMETRE | 11000 | 2600 | 1:50          | A4
			MILLIMETRE | 18000 | 2600 | 1:50          | A3
			INCH       |  3000 | 2400 | 1/2" = 1'-0"  | Letter
			INCH       |  8000 | 2600 | 1/2" = 1'-0"  | Tabloid
			INCH       | 10000 | 2600 | 3/8" = 1'-0"  | Tabloid
			""")
	void theLargestScaleThatFitsIsTaken(LengthUnit unit, long length, long height, String scale, String paper) {
		SheetFit fit = fit(unit, length, height);
		assertEquals(scale + " " + paper, fit.scale().label() + " " + fit.paper().name());
		assertTrue(fit.left() >= SheetFit.SIDE && fit.bottom() >= SheetFit.FOOT);
	}

	@Test
	void aWallTooLongForAnySheetGetsItsOwn() {
		SheetFit fit = fit(LengthUnit.MILLIMETRE, 200_000, 3000);
		assertEquals("1:50", fit.scale().label());
		assertTrue(fit.paper().width() > 200_000 / 50.0);
	}
}
