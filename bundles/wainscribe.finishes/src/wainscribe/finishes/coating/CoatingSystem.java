// SPDX-License-Identifier: EPL-2.0
package wainscribe.finishes.coating;

import java.util.Objects;

import wainscribe.model.Binder;
import wainscribe.model.GlossLevel;

/**
 * What a kind of paint can do. The label of the paint bought rules.
 *
 * @param id stable id
 * @param name shown
 * @param binder what binds it
 * @param gloss gloss level by measured limits
 * @param scrub wet-scrub class 1 to 5 (EN 13300)
 * @param mildew whether it passes a mildew test (ASTM D3273 rating 10)
 * @param hiding contrast ratio in per cent of one coat at its spreading rate
 * @param spread square metres a litre covers in one coat
 * @param solids volume solids in per cent
 * @param recoat hours to the next coat at 23 degrees and 50 %
 * @param cure days to full cure at 23 degrees and 50 %
 * @param coldest lowest temperature of air and surface in degrees Celsius
 * @param warmest highest temperature in degrees Celsius
 * @param dampest highest relative humidity of the air in per cent
 * @param voc volatile organic compounds in g/L
 */
public record CoatingSystem(String id, String name, Binder binder, GlossLevel gloss, int scrub, boolean mildew, double hiding,
		double spread, double solids, double recoat, double cure, double coldest, double warmest, double dampest, double voc) {

	/** Refuses nulls; numbers are checked where they are read. */
	public CoatingSystem {
		Objects.requireNonNull(id);
		Objects.requireNonNull(name);
		Objects.requireNonNull(binder);
		Objects.requireNonNull(gloss);
	}

	/** Returns the dry film of one coat in micrometres: what a litre leaves on its area. */
	public double dryFilm() {
		return solids / 100 * 1000 / spread;
	}
}
