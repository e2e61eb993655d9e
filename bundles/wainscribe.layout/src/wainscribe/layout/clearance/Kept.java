// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.clearance;

import java.util.Objects;

import wainscribe.model.length.Length;
import wainscribe.model.outline.Outline;

/**
 * A part of a surveyed thing with the distance that mouldings keep from it, as the survey measures: heights from the floor
 * line.
 *
 * @param outline what it covers
 * @param sides   distance left and right of it
 * @param below   distance below it
 * @param above   distance above it
 */
public record Kept(Outline outline, Length sides, Length below, Length above) {

	/** Refuses nulls. */
	public Kept {
		Objects.requireNonNull(outline);
		Objects.requireNonNull(sides);
		Objects.requireNonNull(below);
		Objects.requireNonNull(above);
	}

	/** Returns what stays free of mouldings. */
	public Outline whole() {
		return outline.grown(sides, below, above);
	}

	/** Tells whether mouldings stop short of the thing itself. */
	public boolean isDistant() {
		return sides.signum() > 0;
	}

	static Kept touching(Outline outline) {
		return new Kept(outline, Length.ZERO, Length.ZERO, Length.ZERO);
	}

	static Kept allRound(Outline outline, Length distance) {
		return new Kept(outline, distance, distance, distance);
	}

	static Kept under(Outline outline, Length above) {
		return new Kept(outline, Length.ZERO, Length.ZERO, above);
	}
}
