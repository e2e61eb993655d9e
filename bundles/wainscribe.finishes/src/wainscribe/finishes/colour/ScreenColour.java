// SPDX-License-Identifier: EPL-2.0
package wainscribe.finishes.colour;

import java.util.Optional;

/**
 * What the screen shows for a colour: the colour itself, or the nearest it can on the way to grey of the same lightness and hue.
 *
 * @param code what to paint
 * @param exact whether the screen can show the colour
 * @param difference CIEDE2000 from the wanted colour, 0 where exact
 */
public record ScreenColour(Srgb code, boolean exact, double difference) {

	private static final int HALVINGS = 30;

	/** Returns what the screen shows for a CIELAB colour under D65. */
	public static ScreenColour of(Lab wanted) {
		Optional<Srgb> shown = shown(wanted);
		if (shown.isPresent()) {
			return new ScreenColour(shown.get(), true, 0);
		}
		Lab inside = new Lab(Math.clamp(wanted.lightness(), 0, 100), 0, 0);
		double low = 0;
		double high = wanted.chroma();
		Lab level = new Lab(inside.lightness(), wanted.a(), wanted.b());
		for (int i = 0; i < HALVINGS; i++) {
			double middle = (low + high) / 2;
			Lab tried = level.withChroma(middle);
			if (shown(tried).isPresent()) {
				low = middle;
				inside = tried;
			} else {
				high = middle;
			}
		}
		return new ScreenColour(shown(inside).orElseThrow(), false, ColourDifference.ciede2000(wanted, inside));
	}

	private static Optional<Srgb> shown(Lab lab) {
		return lab.lightness() < 0 || lab.lightness() > 100.5 ? Optional.empty() : Srgb.of(lab.toXyz(Srgb.WHITE));
	}
}
