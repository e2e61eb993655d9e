// SPDX-License-Identifier: EPL-2.0
package wainscribe.finishes.colour;

import java.util.Optional;

/** Reads colours written as {@code #rrggbb} or {@code lab:L,a,b}. */
public final class ColourSyntax {

	private static final String LAB = "lab:"; //$NON-NLS-1$
	private static final double FURTHEST = 200;

	private ColourSyntax() {
	}

	/** Returns the colour of the text, or nothing where it is none: another form, L outside 0 to 100, a or b beyond 200 either way. */
	public static Optional<SurfaceColour> parse(String text) {
		String trimmed = text.trim();
		if (trimmed.regionMatches(true, 0, LAB, 0, LAB.length())) {
			return lab(trimmed.substring(LAB.length()).split(",", -1)); //$NON-NLS-1$
		}
		return Srgb.parse(trimmed).map(SurfaceColour.Screen::new);
	}

	/** Returns the colour of three texts L, a and b, or nothing where one is no number or out of range. */
	static Optional<SurfaceColour> lab(String... parts) {
		if (parts.length != 3) {
			return Optional.empty();
		}
		try {
			double lightness = Double.parseDouble(parts[0].trim());
			double a = Double.parseDouble(parts[1].trim());
			double b = Double.parseDouble(parts[2].trim());
			boolean real = lightness >= 0 && lightness <= 100 && Math.abs(a) <= FURTHEST && Math.abs(b) <= FURTHEST;
			return real ? Optional.of(new SurfaceColour.Given(new Lab(lightness, a, b))) : Optional.empty();
		} catch (NumberFormatException e) {
			return Optional.empty();
		}
	}
}
