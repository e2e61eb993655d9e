// SPDX-License-Identifier: EPL-2.0
package wainscribe.finishes.colour;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class SmoothestReflectanceTest {

	/** The estimate gives back the colour it was made for; the far corners of the screen are at the edge of what a surface can be. */
	@Property(tries = 300)
	void givesTheColourBack(@ForAll @IntRange(min = 6, max = 250) int red, @ForAll @IntRange(min = 6, max = 250) int green,
			@ForAll @IntRange(min = 6, max = 250) int blue) {
		SurfaceColour.Screen colour = new SurfaceColour.Screen(new Srgb(red, green, blue));
		Spectrum reflectance = colour.reflectance();
		Lab back = new SurfaceColour.Measured(reflectance).lab();
		assertTrue(ColourDifference.ciede2000(colour.lab(), back) < 0.01, () -> colour.code().hex() + " came back as " + back);
		for (int i = 0; i < Spectrum.SIZE; i++) {
			assertTrue(reflectance.get(i) >= 0 && reflectance.get(i) <= 1);
		}
	}

	/** A grey has a flat reflectance, the smoothest there is. */
	@Test
	void greyIsFlat() {
		Spectrum grey = new SurfaceColour.Given(new Lab(50, 0, 0)).reflectance();
		for (int i = 0; i < Spectrum.SIZE; i++) {
			assertEquals(0.18418651851, grey.get(i), 1e-6);
		}
	}

	@Test
	void whiteStaysWhiteByAnyLight() {
		for (Illuminant light : Illuminants.all()) {
			Lab white = LitColour.of(Spectrum.flat(1), light).lab();
			assertEquals(100, white.lightness(), 1e-9, light.id());
			assertEquals(0, white.chroma(), 1e-6, light.id());
		}
	}

	/** By its own reference light a colour looks as it is. */
	@Test
	void byDaylightAColourLooksAsItIs() {
		SurfaceColour sage = ColourSyntax.parse("lab:62,-9,8").orElseThrow();
		assertTrue(ColourDifference.ciede2000(sage.lab(), LitColour.of(sage, Illuminants.D65).lab()) < 0.01);
	}

	/** Under an incandescent lamp blues darken and reds lighten, as its power lies in the long waves (common practice). */
	@Test
	void lampLiftsRedAndDropsBlue() {
		SurfaceColour red = ColourSyntax.parse("#b04030").orElseThrow();
		SurfaceColour blue = ColourSyntax.parse("#3050a0").orElseThrow();
		assertTrue(LitColour.of(red, Illuminants.A).lab().lightness() > red.lab().lightness() + 1);
		assertTrue(LitColour.of(blue, Illuminants.A).lab().lightness() < blue.lab().lightness() - 1);
	}

	@Test
	void aMatchOfOneColourWithAnotherSpectrumFallsApart() {
		SurfaceColour.Measured stepped = new SurfaceColour.Measured(
				Spectrum.of(nm -> 0.3 + 0.15 * Math.cos(2 * Math.PI * (nm - 380) / 95)));
		SurfaceColour.Measured smooth = new SurfaceColour.Measured(new SurfaceColour.Given(stepped.lab()).reflectance());
		Metamerism metamerism = Metamerism.of(smooth, stepped, Illuminants.FL11);
		assertTrue(metamerism.byDaylight() < 0.01);
		assertTrue(metamerism.byLight() > 1);
	}
}
