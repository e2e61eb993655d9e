// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.drafting.appearance;

import wainscribe.drawing.Palette;
import wainscribe.drawing.Tone;

/**
 * Colours of the drawing table: those of the drawing, and those of what is laid over it.
 *
 * @param drawing   colours of the drawing itself
 * @param select    outline and handles of what is selected; at least 3:1 against ground and wall (WCAG 2.2, 1.4.11)
 * @param hover     tint under the pointer
 * @param guide     lines that something has snapped to
 * @param note      ground of the note beside the pointer
 * @param noteText  its text; at least 4.5:1 (WCAG 2.2, 1.4.3)
 * @param ruler     ground of the rulers
 * @param rulerInk  their marks and numbers
 * @param bar       ground of the quiet bar
 * @param barText   its text
 */
public record TableColours(Palette drawing, Tone select, Tone hover, Tone guide, Tone note, Tone noteText, Tone ruler,
		Tone rulerInk, Tone bar, Tone barText) {

	/** Returns the colours by day. */
	public static TableColours light() {
		return new TableColours(Palette.light(), Tone.of(0x1d5f8a), Tone.of(0x7fb2d1), Tone.of(0xb0486a), Tone.of(0x2b3a42),
				Tone.of(0xffffff), Tone.of(0xebe7de), Tone.of(0x5a554d), Tone.of(0xf6e7c4), Tone.of(0x4d3a12));
	}

	/** Returns the colours by lamplight. */
	public static TableColours dark() {
		return new TableColours(Palette.dark(), Tone.of(0x8fd0f5), Tone.of(0x4a7d99), Tone.of(0xf08fb0), Tone.of(0xe6e1d6),
				Tone.of(0x1f2123), Tone.of(0x27292c), Tone.of(0xa9a59c), Tone.of(0x4a3d1e), Tone.of(0xf3e3bd));
	}

	/**
	 * Returns the colours where the system asks for high contrast.
	 *
	 * @param ground    the system's background
	 * @param text      the system's text
	 * @param highlight the system's selection
	 */
	public static TableColours contrast(Tone ground, Tone text, Tone highlight) {
		Palette palette = new Palette(ground, ground, ground, ground, ground, text, ground, ground, text, text, text, text);
		return new TableColours(palette, highlight, highlight, highlight, text, ground, ground, text, ground, text);
	}
}
