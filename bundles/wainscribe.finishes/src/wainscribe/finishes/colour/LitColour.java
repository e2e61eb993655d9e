// SPDX-License-Identifier: EPL-2.0
package wainscribe.finishes.colour;

/**
 * How a surface looks by a light to an eye adapted to it, told as the colour that looks so under D65.
 * <p>
 * The surface's spectrum (measured or estimated) is summed under the light and moved to D65 by {@link Cat16}. A white stays white under any
 * light; a paint that the light distorts does not stay itself.
 *
 * @param light the light
 * @param lab CIELAB under D65 that looks the same
 */
public record LitColour(Illuminant light, Lab lab) {

	/** Returns how the surface looks by the light. */
	public static LitColour of(SurfaceColour surface, Illuminant light) {
		return of(surface.reflectance(), light);
	}

	/** Returns how a reflectance looks by the light. */
	public static LitColour of(Spectrum reflectance, Illuminant light) {
		Observer observer = Observer.TWO_DEGREES;
		Xyz reference = observer.white(Illuminants.D65);
		Xyz seen = observer.seen(reflectance, light);
		return new LitColour(light, Lab.of(new Cat16(observer.white(light), reference).adapted(seen), reference));
	}
}
