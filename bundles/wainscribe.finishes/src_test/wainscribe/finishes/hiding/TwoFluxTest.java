// SPDX-License-Identifier: EPL-2.0
package wainscribe.finishes.hiding;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TwoFluxTest {

	/** Kubelka 1948 (doi 10.1364/JOSA.38.000448), found again by integrating the differential equation with an independent program. */
	@ParameterizedTest
	@CsvSource({ "0.90,3,0.740764,0.856570,0.864803", "0.90,12,0.885491,0.894471,0.989960", "0.80,4,0.746762,0.800000,0.933452",
			"0.50,2,0.481095,0.518441,0.927965", "0.20,1,0.198419,0.205637,0.964903", "0.95,10,0.900947,0.922264,0.976887" })
	void reflectanceOverBlackAndWhite(double complete, double scattering, double black, double white, double ratio) {
		TwoFlux paint = new TwoFlux(complete, 0.1);
		double film = scattering / 0.1;
		assertEquals(black, paint.over(film, 0), 1e-6);
		assertEquals(white, paint.over(film, 0.8), 1e-6);
		assertEquals(ratio, paint.contrastRatio(film), 1e-6);
	}

	/** Film for a contrast ratio of 0.98 after ASTM D2805 (grounds 0 and 0.80), solved by an independent program. */
	@ParameterizedTest
	@CsvSource({ "0.95,10.80894", "0.90,9.14267", "0.80,6.50069", "0.50,2.87166", "0.30,1.63652" })
	void filmThatHides(double complete, double scattering) {
		assertEquals(scattering, new TwoFlux(complete, 1).hidingFilm(), 1e-5);
	}

	/** K/S by its definition; 0.9 gives 1/180. */
	@Test
	void absorptionToScatter() {
		assertEquals(1.0 / 180, new TwoFlux(0.9, 1).absorptionToScatter(), 1e-12);
	}

	@Property
	void aPaintOfAContrastRatioHasIt(@ForAll @DoubleRange(min = 0.1, max = 0.95) double complete,
			@ForAll @DoubleRange(min = 0.7, max = 0.99) double ratio) {
		assertEquals(ratio, TwoFlux.ofContrastRatio(complete, 30, ratio).contrastRatio(30), 1e-9);
	}

	/** Two thin films make one thick one: the theory's own law. */
	@Property
	void filmsAddUp(@ForAll @DoubleRange(min = 0.1, max = 0.95) double complete, @ForAll @DoubleRange(min = 1, max = 60) double first,
			@ForAll @DoubleRange(min = 1, max = 60) double second, @ForAll @DoubleRange(min = 0, max = 1) double ground) {
		TwoFlux paint = new TwoFlux(complete, 0.05);
		assertEquals(paint.over(first + second, ground), paint.over(second, paint.over(first, ground)), 1e-9);
	}

	@Test
	void aDarkWallTakesMoreCoatsOfAPalePaint() {
		TwoFlux pale = TwoFlux.ofContrastRatio(0.8, 35, 0.95);
		assertEquals(1, pale.coats(35, 0.79, 0.01));
		assertTrue(pale.coats(35, 0.05, 0.002) > pale.coats(35, 0.78, 0.002));
	}
}
