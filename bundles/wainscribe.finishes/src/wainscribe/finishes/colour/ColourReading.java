// SPDX-License-Identifier: EPL-2.0
package wainscribe.finishes.colour;

import java.util.Optional;

/**
 * The numbers of a colour.
 *
 * @param lab CIELAB under D65 for 2 degrees
 * @param lightReflectance light reflectance value, 0 to 100
 * @param against how it differs from another colour, empty where there is none
 * @param seen how it looks by a light
 * @param screen what the screen shows for it
 */
public record ColourReading(Lab lab, double lightReflectance, Optional<Comparison> against, LitColour seen, ScreenColour screen) {

	/**
	 * How two colours differ.
	 *
	 * @param difference CIEDE2000
	 * @param contrast contrast of adjoining surfaces
	 */
	public record Comparison(double difference, Contrast contrast) {
	}

	/** Reads a colour, perhaps against another, by a light. */
	public static ColourReading of(SurfaceColour colour, Optional<SurfaceColour> other, Illuminant light) {
		Optional<Comparison> against = other.map(o -> new Comparison(ColourDifference.ciede2000(colour.lab(), o.lab()), Contrast.between(colour, o)));
		return new ColourReading(colour.lab(), colour.lightReflectance(), against, LitColour.of(colour, light), ScreenColour.of(colour.lab()));
	}
}
