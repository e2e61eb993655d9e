// SPDX-License-Identifier: EPL-2.0
package wainscribe.finishes.colour;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class ScreenColourTest {

	@Property
	void screenColoursAreShownAsTheyAre(@ForAll @IntRange(min = 0, max = 0xffffff) int code) {
		Srgb colour = Srgb.parse(String.format("#%06x", code)).orElseThrow();
		ScreenColour shown = ScreenColour.of(colour.toLab());
		assertEquals(colour, shown.code());
		assertTrue(shown.exact());
	}

	@Test
	void aColourBeyondTheScreenKeepsLightnessAndHueAndSaysSo() {
		Lab wanted = new Lab(60, -90, 0);
		ScreenColour shown = ScreenColour.of(wanted);
		assertFalse(shown.exact());
		assertTrue(shown.difference() > 5);
		assertEquals(60, shown.code().toLab().lightness(), 0.6);
		assertEquals(180, shown.code().toLab().hue(), 2);
	}
}
