// SPDX-License-Identifier: EPL-2.0
package wainscribe.cli.text;

import java.util.Locale;

import wainscribe.finishes.colour.ColourReading;
import wainscribe.finishes.colour.Lab;

/** The numbers of a colour for people. */
public final class ColourText {

	private static final double ZERO = 0.005;

	private ColourText() {
	}

	/** Returns the text, ending in a line break. */
	public static String of(ColourReading reading) {
		StringBuilder text = new StringBuilder();
		line(text, "CIELAB (D65, 2 degrees)  L %.2f, a %.2f, b %.2f", reading.lab()); //$NON-NLS-1$
		text.append(String.format(Locale.ROOT, "chroma and hue           C %.2f, h %.1f degrees%n", reading.lab().chroma(), reading.lab().hue())); //$NON-NLS-1$
		text.append(String.format(Locale.ROOT, "light reflectance        %.1f of 100%n", reading.lightReflectance())); //$NON-NLS-1$
		reading.against().ifPresent(against -> text.append(String.format(Locale.ROOT,
				"against the other        difference %.2f (CIEDE2000), contrast %.2f : 1, reflectance %.1f points apart%n", //$NON-NLS-1$
				against.difference(), against.contrast().ratio(), against.contrast().reflectancePoints())));
		line(text, "by " + reading.seen().light().id() + " it looks like       L %.2f, a %.2f, b %.2f (under D65, by the smoothest spectrum of this colour)", //$NON-NLS-1$ //$NON-NLS-2$
				reading.seen().lab());
		text.append(reading.screen().exact() ? String.format("the screen shows it as   %s%n", reading.screen().code().hex()) //$NON-NLS-1$
				: String.format(Locale.ROOT, "the screen can't show it; nearest %s, %.1f away (CIEDE2000)%n", reading.screen().code().hex(), //$NON-NLS-1$
						reading.screen().difference()));
		return text.toString();
	}

	private static void line(StringBuilder text, String format, Lab lab) {
		text.append(String.format(Locale.ROOT, format + "%n", lab.lightness(), plain(lab.a()), plain(lab.b()))); //$NON-NLS-1$
	}

	/** Two decimals without a sign at zero. */
	private static double plain(double value) {
		return Math.abs(value) < ZERO ? 0 : value;
	}
}
