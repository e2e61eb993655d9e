// SPDX-License-Identifier: EPL-2.0
package wainscribe.report.pdf;

import wainscribe.model.length.LengthUnit;

/**
 * How a stick is divided into strips and what rulers carry; measures in millimetres.
 *
 * @param carried       how much of a stick a strip carries, register cross to register cross
 * @param overlap       how far a strip reaches beyond its crosses
 * @param tick          distance of the ticks along a stick's edge
 * @param numbered      every how many ticks a number stands
 * @param number        what a number counts on by
 * @param check         length of the check ruler
 * @param checkSteps    how many parts it has
 * @param checkNumbered every how many parts a number stands on it
 * @param checkNumber   what that number counts on by
 * @param checkText     its length in words
 */
record StripScale(double carried, double overlap, double tick, int numbered, int number, double check, int checkSteps,
		int checkNumbered, int checkNumber, String checkText) {

	private static final double INCH = 25.4;

	/** Whole strips are 240 mm or 9 in long, so joints fall on whole numbers of the tape. */
	static StripScale of(LengthUnit unit) {
		return unit == LengthUnit.INCH ? new StripScale(9 * INCH, 10, INCH / 4, 4, 1, 4 * INCH, 16, 4, 1, "exactly 4 in")
				: new StripScale(240, 12, 10, 5, 50, 100, 10, 5, 50, "exactly 100 mm");
	}
}
