// SPDX-License-Identifier: EPL-2.0
package wainscribe.finishes.colour;

/**
 * How far a match that is good by one light falls apart by another. Source of the idea: CIE 015:2018 section 9.2, special metamerism index,
 * here with CIEDE2000 and without correcting the rest of the match by daylight, which is given beside it.
 *
 * @param light the other light
 * @param byDaylight CIEDE2000 of the pair under D65
 * @param byLight CIEDE2000 of the pair by the light
 */
public record Metamerism(Illuminant light, double byDaylight, double byLight) {

	/** Returns the differences of a match and its sample, both measured. */
	public static Metamerism of(SurfaceColour.Measured match, SurfaceColour.Measured sample, Illuminant light) {
		return new Metamerism(light, ColourDifference.ciede2000(match.lab(), sample.lab()),
				ColourDifference.ciede2000(LitColour.of(match, light).lab(), LitColour.of(sample, light).lab()));
	}
}
