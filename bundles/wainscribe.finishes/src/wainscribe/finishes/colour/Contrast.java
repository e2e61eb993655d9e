// SPDX-License-Identifier: EPL-2.0
package wainscribe.finishes.colour;

/**
 * Contrast of two adjoining surfaces.
 *
 * @param ratio of relative luminances, 1 to 21. Source: W3C WCAG 2.1, contrast ratio
 * @param reflectancePoints difference of light reflectance values, 0 to 100. Source: BS 8493:2008+A1:2010; Approved Document M asks for 30
 */
public record Contrast(double ratio, double reflectancePoints) {

	private static final double FLARE = 0.05;

	/** Returns the contrast, whichever surface is the lighter. */
	public static Contrast between(SurfaceColour one, SurfaceColour other) {
		double y1 = luminance(one);
		double y2 = luminance(other);
		return new Contrast((Math.max(y1, y2) + FLARE) / (Math.min(y1, y2) + FLARE),
				Math.abs(one.lightReflectance() - other.lightReflectance()));
	}

	/** WCAG rounds the weights of the screen's primaries to four digits. */
	private static double luminance(SurfaceColour surface) {
		return surface instanceof SurfaceColour.Screen screen ? screen.code().relativeLuminance() : surface.lightReflectance() / 100;
	}
}
