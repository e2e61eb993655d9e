// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.solver;

/**
 * A straight line across a wall, in units of 1/8000 mm.
 *
 * @param start height at x = 0
 * @param rise  how far it climbs over {@code run}
 * @param run   a level distance, above zero
 */
public record Line(long start, long rise, long run) {

	/** Refuses a run that is none. */
	public Line {
		if (run <= 0) {
			throw new IllegalArgumentException("run " + run); //$NON-NLS-1$
		}
	}

	/** Returns a level line. */
	public static Line level(long height) {
		return new Line(height, 0, 1);
	}

	/** Returns the height at x, rounded down. */
	public long at(long x) {
		return rise == 0 ? start : start + Math.floorDiv(rise * x, run);
	}

	/** Returns the line moved up. */
	public Line up(long distance) {
		return new Line(start + distance, rise, run);
	}

	/** Tells whether it does not climb. */
	public boolean isLevel() {
		return rise == 0;
	}

	/** Returns the plumb distance that is {@code distance} square to the line, to the nearest unit. */
	public long plumb(long distance) {
		return rise == 0 ? distance : Math.round(distance * Math.hypot(1, (double) rise / run));
	}
}
