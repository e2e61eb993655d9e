// SPDX-License-Identifier: EPL-2.0
package wainscribe.finishes.coating;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.util.Optional;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wainscribe.model.Binder;
import wainscribe.model.GlossLevel;
import wainscribe.model.Paint;
import wainscribe.model.WainscribeFactory;

class PaintClassesTest {

	/** Master Painters Institute, gloss and sheen standard; 20 to 25 at 60 degrees is decided by the reading at 85. */
	@ParameterizedTest
	@CsvSource({ "3,8,G1", "8,20,G2", "15,20,G3", "22,20,G3", "22,50,G4", "30,40,G4", "50,60,G5", "80,90,G6", "90,95,G7" })
	void gloss(double at60, double at85, GlossLevel level) {
		assertEquals(Optional.of(level), PaintClasses.gloss(at60, at85));
	}

	@Test
	void readingsThatFitNoLevelAreNotForced() {
		assertTrue(PaintClasses.gloss(30, 10).isEmpty());
		assertTrue(PaintClasses.gloss(Double.NaN, 10).isEmpty());
	}

	/** EN 13300:2001 at its boundaries. */
	@ParameterizedTest
	@CsvSource({ "4.99,200,1", "5,200,2", "20,200,3", "69.9,40,4", "70,40,5" })
	void scrub(double loss, int cycles, int scrubClass) {
		assertEquals(Optional.of(scrubClass), PaintClasses.scrub(loss, cycles));
	}

	/** EN 13300:2001 at its boundaries. */
	@ParameterizedTest
	@CsvSource({ "99.5,1", "99.49,2", "98,2", "97.9,3", "95,3", "94.9,4" })
	void hiding(double ratio, int hidingClass) {
		assertEquals(Optional.of(hidingClass), PaintClasses.hiding(ratio));
	}

	@Test
	void theNearestSystemHasTheBinderThenTheGloss() {
		Paint paint = WainscribeFactory.eINSTANCE.createPaint();
		paint.setBinder(Binder.ALKYD);
		paint.setGloss(GlossLevel.G7);
		CoatingSystem system = CoatingCatalogue.builtIn().nearest(paint).orElseThrow();
		assertEquals(Binder.ALKYD, system.binder());
		assertEquals(GlossLevel.G6, system.gloss());
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', value = { "a,A,oil,G3,2,yes,96,9,37,4,30,10,35,85,50|row 2, column binder: \"oil\": expected acrylic",
			"a,A,acrylic,G9,2,yes,96,9,37,4,30,10,35,85,50|row 2, column gloss", "a,A,acrylic,G3,2,yes,NaN,9,37,4,30,10,35,85,50|column hiding",
			"a,A,acrylic,G3,2,yes,96,9,37,4,30,40,35,85,50|column warmest", "a,A,acrylic|found 3 cells, expected 15" })
	void badRowsAreNamed(String row, String message) {
		String text = String.join(",", CoatingReader.COLUMNS) + "\n" + row + "\n";
		CoatingException refused = assertThrows(CoatingException.class, () -> new CoatingReader().read(new StringReader(text), "mine.csv"));
		assertTrue(refused.getMessage().startsWith("mine.csv") && refused.getMessage().contains(message), refused.getMessage());
	}

	@Test
	void aListWithoutHeaderIsRefused() throws IOException {
		assertThrows(CoatingException.class, () -> new CoatingReader().read(new StringReader(""), "mine.csv"));
	}
}
