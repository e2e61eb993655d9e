// SPDX-License-Identifier: EPL-2.0
package wainscribe.benchmarks.rooms;

import java.util.Objects;

import wainscribe.model.length.LengthUnit;

/**
 * Writes lengths as a tape shows them: whole millimetres, or eighths of an inch.
 *
 * @param unit unit of the tape
 */
record Tape(LengthUnit unit) {

	private static final double EIGHTH = 25.4 / 8;

	/** Refuses null. */
	Tape {
		Objects.requireNonNull(unit);
	}

	/** Returns a length, rounded to the nearest mark, as a cell of a survey. */
	String cell(int millimetres) {
		if (unit == LengthUnit.MILLIMETRE) {
			return String.valueOf(millimetres);
		}
		long eighths = Math.round(millimetres / EIGHTH);
		long rest = eighths % 8;
		String fraction = rest % 4 == 0 ? rest / 4 + "/2" : rest % 2 == 0 ? rest / 2 + "/4" : rest + "/8";
		return eighths / 8 + (rest == 0 ? "" : " " + fraction);
	}

	/** Returns the millimetres that {@link #cell} stands for, to the nearest. */
	int rounded(int millimetres) {
		return unit == LengthUnit.MILLIMETRE ? millimetres : (int) Math.round(Math.round(millimetres / EIGHTH) * EIGHTH);
	}
}
