// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing.pdf;

import java.util.List;

import wainscribe.model.length.LengthUnit;

/**
 * A scale that rules and readers of drawings know.
 *
 * @param ratio how many millimetres on the wall one of paper stands for
 * @param label as it is written on a drawing: {@code 1:20} or {@code 3/4" = 1'-0"}
 */
public record DrawingScale(double ratio, String label) {

	private static final List<DrawingScale> METRIC = List.of(new DrawingScale(10, "1:10"), new DrawingScale(20, "1:20"),
			new DrawingScale(25, "1:25"), new DrawingScale(50, "1:50"), new DrawingScale(100, "1:100"),
			new DrawingScale(200, "1:200"));
	/** An inch scale is named by the inches that stand for a foot: 3/4 in for 12 in is 1:16. */
	private static final List<DrawingScale> INCH = List.of(new DrawingScale(12, "1\" = 1'-0\""),
			new DrawingScale(16, "3/4\" = 1'-0\""), new DrawingScale(24, "1/2\" = 1'-0\""),
			new DrawingScale(32, "3/8\" = 1'-0\""), new DrawingScale(48, "1/4\" = 1'-0\""),
			new DrawingScale(96, "1/8\" = 1'-0\""), new DrawingScale(192, "1/16\" = 1'-0\""));

	/** Returns the scales used with a unit, the largest drawing first. */
	public static List<DrawingScale> of(LengthUnit unit) {
		return unit == LengthUnit.INCH ? INCH : METRIC;
	}
}
