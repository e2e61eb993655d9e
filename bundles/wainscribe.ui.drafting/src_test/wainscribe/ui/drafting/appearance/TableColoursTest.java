// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.drafting.appearance;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

import wainscribe.drawing.Tone;

/** Contrast by the definition of relative luminance and contrast ratio in WCAG 2.2 (W3C Recommendation, 1.4.3 and 1.4.11). */
class TableColoursTest {

	private static final double TEXT = 4.5;
	private static final double GRAPHICS = 3;

	private enum Scheme {
		LIGHT(TableColours.light()), DARK(TableColours.dark()),
		CONTRAST(TableColours.contrast(Tone.of(0), Tone.of(0xffffff), Tone.of(0xffff00)));

		private final TableColours colours;

		Scheme(TableColours colours) {
			this.colours = colours;
		}
	}

	@ParameterizedTest
	@EnumSource
	void textCanBeRead(Scheme scheme) {
		TableColours colours = scheme.colours;
		assertContrast(TEXT, colours.noteText(), colours.note());
		assertContrast(TEXT, colours.rulerInk(), colours.ruler());
		assertContrast(TEXT, colours.barText(), colours.bar());
		assertContrast(TEXT, colours.drawing().note(), colours.drawing().ground());
		assertContrast(TEXT, colours.drawing().ink(), colours.drawing().wall());
	}

	@ParameterizedTest
	@EnumSource
	void whatIsSelectedAndWhatGuidesCanBeSeen(Scheme scheme) {
		TableColours colours = scheme.colours;
		for (Tone ground : new Tone[] { colours.drawing().ground(), colours.drawing().wall(), colours.drawing().thing(),
				colours.drawing().glass() }) {
			assertContrast(GRAPHICS, colours.select(), ground);
			assertContrast(GRAPHICS, colours.guide(), ground);
		}
	}

	private static void assertContrast(double least, Tone one, Tone other) {
		double a = luminance(one);
		double b = luminance(other);
		double ratio = (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
		assertTrue(ratio >= least, one.hex() + " on " + other.hex() + ": " + ratio + " is below " + least);
	}

	private static double luminance(Tone tone) {
		return 0.2126 * linear(tone.red()) + 0.7152 * linear(tone.green()) + 0.0722 * linear(tone.blue());
	}

	private static double linear(int channel) {
		double share = channel / 255.0;
		return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
	}
}
