// SPDX-License-Identifier: EPL-2.0
package wainscribe.finishes.colour;

import java.util.Optional;
import java.util.regex.Pattern;

/**
 * A colour of the screen, 8 bits a channel. Source: IEC 61966-2-1:1999 with the matrix of its primaries to seven digits.
 *
 * @param red 0 to 255
 * @param green 0 to 255
 * @param blue 0 to 255
 */
public record Srgb(int red, int green, int blue) {

	/** The white of the screen. */
	public static final Xyz WHITE = new Xyz(95.047, 100, 108.883);

	private static final double[][] TO_XYZ = { { 0.4124564, 0.3575761, 0.1804375 }, { 0.2126729, 0.7151522, 0.0721750 },
			{ 0.0193339, 0.1191920, 0.9503041 } };
	private static final double[][] FROM_XYZ = Matrix3.inverse(TO_XYZ);
	private static final Pattern HEX = Pattern.compile("#[0-9a-fA-F]{6}"); //$NON-NLS-1$

	/** Refuses what is out of range. */
	public Srgb {
		if (((red | green | blue) & ~0xff) != 0) {
			throw new IllegalArgumentException("A channel lies in 0 to 255"); //$NON-NLS-1$
		}
	}

	/** Returns the colour of a text such as {@code #8a9a94}. */
	public static Optional<Srgb> parse(String text) {
		if (!HEX.matcher(text).matches()) {
			return Optional.empty();
		}
		int code = Integer.parseInt(text.substring(1), 16);
		return Optional.of(new Srgb(code >> 16, code >> 8 & 0xff, code & 0xff));
	}

	/** Returns the colour of tristimulus values under the screen's white, or nothing where the screen can't show it. */
	public static Optional<Srgb> of(Xyz colour) {
		Xyz linear = Matrix3.times(FROM_XYZ, colour.times(0.01));
		return inRange(linear.x()) && inRange(linear.y()) && inRange(linear.z())
				? Optional.of(new Srgb(encoded(linear.x()), encoded(linear.y()), encoded(linear.z())))
				: Optional.empty();
	}

	/** Returns the tristimulus values, Y = 100 for white. */
	public Xyz toXyz() {
		return Matrix3.times(TO_XYZ, new Xyz(linear(red), linear(green), linear(blue))).times(100);
	}

	/** Returns CIELAB under the screen's white. */
	public Lab toLab() {
		return Lab.of(toXyz(), WHITE);
	}

	/** Returns the relative luminance, 0 to 1. Source: W3C WCAG 2.1, relative luminance. */
	public double relativeLuminance() {
		return 0.2126 * linear(red) + 0.7152 * linear(green) + 0.0722 * linear(blue);
	}

	/** Returns the text, for instance {@code #8a9a94}. */
	public String hex() {
		return String.format("#%02x%02x%02x", red, green, blue); //$NON-NLS-1$
	}

	/** Returns the linear light, 0 to 1, of a channel value 0 to 255. */
	static double linear(int channel) {
		double value = channel / 255.0;
		return value <= 0.04045 ? value / 12.92 : Math.pow((value + 0.055) / 1.055, 2.4);
	}

	/** A rounding of half a step outside is still shown as the end of the range. */
	private static boolean inRange(double linear) {
		double encoded = gamma(linear) * 255;
		return encoded > -0.5 && encoded < 255.5;
	}

	private static int encoded(double linear) {
		return (int) Math.round(Math.clamp(gamma(linear) * 255, 0, 255));
	}

	private static double gamma(double linear) {
		return linear <= 0.0031308 ? 12.92 * linear : 1.055 * Math.pow(linear, 1 / 2.4) - 0.055;
	}
}
