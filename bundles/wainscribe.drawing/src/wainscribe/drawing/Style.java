// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing;

import java.util.List;
import java.util.Objects;

/**
 * How a role looks.
 *
 * @param fill   inside of closed paths; colour of text is {@code stroke}
 * @param stroke colour of lines and text
 * @param pen    width of lines, millimetres on paper
 * @param dashes lengths of dashes and gaps in turn, millimetres on paper; empty for a full line
 */
public record Style(Tone fill, Tone stroke, double pen, List<Double> dashes) {

	/** Refuses nulls and copies the list. */
	public Style {
		Objects.requireNonNull(fill);
		Objects.requireNonNull(stroke);
		dashes = List.copyOf(dashes);
	}

	/** Returns a fill without a line. */
	public static Style filled(Tone fill) {
		return new Style(fill, Tone.NONE, 0, List.of());
	}

	/** Returns a line without a fill. */
	public static Style stroked(Tone stroke, double pen, Double... dashes) {
		return new Style(Tone.NONE, stroke, pen, List.of(dashes));
	}

	/** Returns a line round a fill. */
	public static Style outlined(Tone fill, Tone stroke, double pen) {
		return new Style(fill, stroke, pen, List.of());
	}

	/** Returns the style with another fill. */
	public Style withFill(Tone other) {
		return new Style(other, stroke, pen, dashes);
	}
}
