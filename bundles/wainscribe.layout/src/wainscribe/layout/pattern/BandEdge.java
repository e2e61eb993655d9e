// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.pattern;

import java.util.Objects;

import wainscribe.model.length.Length;

/**
 * An edge of a band: a line at one distance from the floor line or from the ceiling line of every wall.
 *
 * @param datum  what it is measured from
 * @param offset how far up from the floor line, or how far down from the ceiling line
 */
public record BandEdge(Datum datum, Length offset) {

	/** What an edge follows, also where it slopes. */
	public enum Datum {
		/** The floor line, on stairs the nosing line. */
		FLOOR,
		/** The ceiling line. */
		CEILING
	}

	/** Refuses nulls. */
	public BandEdge {
		Objects.requireNonNull(datum);
		Objects.requireNonNull(offset);
	}

	/** Returns the edge at a height above the floor line. */
	public static BandEdge aboveFloor(Length height) {
		return new BandEdge(Datum.FLOOR, height);
	}

	/** Returns the edge at a distance below the ceiling line. */
	public static BandEdge belowCeiling(Length drop) {
		return new BandEdge(Datum.CEILING, drop);
	}
}
