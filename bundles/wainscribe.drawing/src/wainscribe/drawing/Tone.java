// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing;

import java.util.regex.Pattern;

/**
 * A colour, or none.
 *
 * @param rgb     red, green and blue of 0 to 255 as 0xRRGGBB
 * @param visible false: nothing is painted
 */
public record Tone(int rgb, boolean visible) {

	/** Nothing is painted. */
	public static final Tone NONE = new Tone(0, false);

	private static final Pattern HEX = Pattern.compile("#[0-9a-fA-F]{6}");
	private static final int CHANNEL = 0xff;

	/** Returns a colour. */
	public static Tone of(int rgb) {
		return new Tone(rgb & 0xffffff, true);
	}

	/**
	 * Reads a colour.
	 *
	 * @param hex such as {@code #8a9a94}
	 * @throws IllegalArgumentException if it is none
	 */
	public static Tone parse(String hex) {
		if (!isHex(hex)) {
			throw new IllegalArgumentException('"' + hex + "\": expected a colour such as #8a9a94");
		}
		return of(Integer.parseInt(hex.substring(1), 16));
	}

	/** Tells whether a text is a colour that {@link #parse} reads; null is none. */
	public static boolean isHex(String hex) {
		return hex != null && HEX.matcher(hex).matches();
	}

	/** Returns red, 0 to 255. */
	public int red() {
		return rgb >> 16 & CHANNEL;
	}

	/** Returns green, 0 to 255. */
	public int green() {
		return rgb >> 8 & CHANNEL;
	}

	/** Returns blue, 0 to 255. */
	public int blue() {
		return rgb & CHANNEL;
	}

	/**
	 * Returns a mix with another colour.
	 *
	 * @param share of the other, 0 to 1
	 */
	public Tone mixed(Tone other, double share) {
		return of(mixed(red(), other.red(), share) << 16 | mixed(green(), other.green(), share) << 8
				| mixed(blue(), other.blue(), share));
	}

	/** Returns the colour as {@code #rrggbb}, or {@code none}. */
	public String hex() {
		return visible ? String.format("#%06x", rgb) : "none";
	}

	private static int mixed(int from, int to, double share) {
		return (int) Math.round(from + (to - from) * share);
	}
}
