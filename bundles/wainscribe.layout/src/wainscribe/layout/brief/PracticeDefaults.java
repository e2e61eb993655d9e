// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.brief;

import wainscribe.model.Material;
import wainscribe.model.length.Length;
import wainscribe.model.length.LengthUnit;

/**
 * What holds where neither the room's nor the home's brief decides: defaults of common practice, each in the unit of the
 * home so that it lands on a mark of the tape.
 * <p>
 * All values are common practice and meant to be overridden by a brief. The height of the rail follows the rule of thumb of
 * one third of the wall (home-building magazine, wainscot rules of thumb).
 */
public final class PracticeDefaults {

	/** Id of the pattern used when none is decided. */
	public static final String PATTERN = "frames-under-rail"; //$NON-NLS-1$
	/** Material of the mouldings when none is decided. */
	public static final Material MATERIAL = Material.MDF;

	private static final int RAIL_SHARE = 3;

	private final boolean inch;

	/**
	 * Creates the defaults of a unit.
	 *
	 * @param units unit of the home
	 */
	public PracticeDefaults(LengthUnit units) {
		inch = units == LengthUnit.INCH;
	}

	/**
	 * Returns the top of the rail: one third of the height of the room, to the nearest whole inch or 10 mm.
	 *
	 * @param roomHeight height of the room; null where it was not measured, then 96 in or 2440 mm is assumed
	 */
	public Length railTop(Length roomHeight) {
		Length height = roomHeight == null ? of(96, 1, 2440) : roomHeight;
		Length step = of(1, 1, 10);
		return height.dividedBy(RAIL_SHARE).roundedTo(step);
	}

	/** Returns the face of the rail: 2 1/2 in or 60 mm. */
	public Length railFace() {
		return of(5, 2, 60);
	}

	/** Returns the projection of the rail: 3/4 in or 20 mm. */
	public Length railThickness() {
		return of(3, 4, 20);
	}

	/** Returns the face of the frame moulding: 1 1/4 in or 32 mm. */
	public Length frameFace() {
		return of(5, 4, 32);
	}

	/** Returns the projection of the frame moulding: 5/8 in or 16 mm. */
	public Length frameThickness() {
		return of(5, 8, 16);
	}

	/** Returns the height of a base where none is kept: 5 1/2 in or 140 mm. */
	public Length base() {
		return of(11, 2, 140);
	}

	/** Returns the gap the layout starts from: 3 in or 80 mm. */
	public Length gap() {
		return of(3, 1, 80);
	}

	/** Returns the lower end of the usual gaps: 2 3/4 in or 70 mm. */
	public Length usualGapLeast() {
		return of(11, 4, 70);
	}

	/** Returns the upper end of the usual gaps: 3 1/2 in or 90 mm. */
	public Length usualGapMost() {
		return of(7, 2, 90);
	}

	/** Returns the lower end of the gaps tried as a last resort: 2 in or 50 mm. */
	public Length wideGapLeast() {
		return of(2, 1, 50);
	}

	/** Returns the upper end of the gaps tried as a last resort: 7 1/2 in or 190 mm. */
	public Length wideGapMost() {
		return of(15, 2, 190);
	}

	/** Returns the step between the gaps tried: 1/16 in or 1 mm, a mark of the tape. */
	public Length gapStep() {
		return of(1, 16, 1);
	}

	/** Returns the least width and height of a frame, whatever its moulding: 200 mm. */
	public Length leastFrame() {
		return Length.ofMillimetres(200);
	}

	/** Returns the face of a plain strip: 2 1/2 in or 64 mm. */
	public Length stripFace() {
		return of(5, 2, 64);
	}

	/** Returns the projection of a plain strip: 1/2 in or 12 mm. */
	public Length stripThickness() {
		return of(1, 2, 12);
	}

	/** Returns the least width and height of a clear field between strips: 100 mm. */
	public Length leastField() {
		return Length.ofMillimetres(100);
	}

	/** Returns the lower end of the usual clear fields between battens: 12 in or 300 mm. */
	public Length usualFieldLeast() {
		return of(12, 1, 300);
	}

	/** Returns the upper end of the usual clear fields between battens: 18 in or 450 mm. */
	public Length usualFieldMost() {
		return of(18, 1, 450);
	}

	private Length of(long numerator, long denominator, long millimetres) {
		return inch ? Length.ofInches(numerator, denominator) : Length.ofMillimetres(millimetres);
	}
}
