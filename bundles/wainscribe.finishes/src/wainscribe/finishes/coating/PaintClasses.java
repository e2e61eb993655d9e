// SPDX-License-Identifier: EPL-2.0
package wainscribe.finishes.coating;

import java.util.Optional;

import wainscribe.model.GlossLevel;

/** Puts measured paints into classes. Words such as "eggshell" decide nothing here. */
public final class PaintClasses {

	private PaintClasses() {
	}

	/**
	 * Returns the gloss level of readings in gloss units, or nothing where they fit none. Source: Master Painters Institute, gloss and sheen
	 * standard; where G3 and G4 overlap (20 to 25 at 60 degrees) the reading at 85 degrees decides, 35 or more is G4.
	 *
	 * @param at60 reading at 60 degrees
	 * @param at85 reading at 85 degrees
	 */
	public static Optional<GlossLevel> gloss(double at60, double at85) {
		if (!(at60 >= 0) || !(at85 >= 0)) {
			return Optional.empty();
		}
		if (at60 > 85) {
			return Optional.of(GlossLevel.G7);
		}
		if (at60 > 70) {
			return Optional.of(GlossLevel.G6);
		}
		if (at60 > 35) {
			return Optional.of(GlossLevel.G5);
		}
		if (at60 >= 20 && at85 >= 35) {
			return Optional.of(GlossLevel.G4);
		}
		if (at60 >= 10 && at60 <= 25 && at85 >= 10 && at85 <= 35) {
			return Optional.of(GlossLevel.G3);
		}
		if (at60 <= 5 && at85 <= 10) {
			return Optional.of(GlossLevel.G1);
		}
		return at60 <= 10 && at85 >= 10 && at85 <= 35 ? Optional.of(GlossLevel.G2) : Optional.empty();
	}

	/**
	 * Returns the wet-scrub class, 1 to 5. Source: EN 13300:2001 with ISO 11998.
	 *
	 * @param loss mean loss of film in micrometres after so many cycles
	 * @param cycles 200, or 40 for classes 4 and 5
	 */
	public static Optional<Integer> scrub(double loss, int cycles) {
		if (!(loss >= 0) || cycles != 200 && cycles != 40) {
			return Optional.empty();
		}
		if (cycles == 40) {
			return Optional.of(loss < 70 ? 4 : 5);
		}
		if (loss < 5) {
			return Optional.of(1);
		}
		if (loss < 20) {
			return Optional.of(2);
		}
		return loss < 70 ? Optional.of(3) : Optional.empty();
	}

	/** Returns the hiding class, 1 to 4, of a contrast ratio in per cent. Source: EN 13300:2001. */
	public static Optional<Integer> hiding(double contrastRatio) {
		if (!(contrastRatio >= 0 && contrastRatio <= 100)) {
			return Optional.empty();
		}
		if (contrastRatio >= 99.5) {
			return Optional.of(1);
		}
		if (contrastRatio >= 98) {
			return Optional.of(2);
		}
		return Optional.of(contrastRatio >= 95 ? 3 : 4);
	}
}
