// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.drafting.rulers;

import wainscribe.model.length.Length;
import wainscribe.model.length.LengthFormat;
import wainscribe.model.length.LengthUnit;

/**
 * Which marks a ruler carries at a scale: numbered ones far enough apart to be read, and finer ones in between.
 *
 * @param numbered distance between numbered marks
 * @param fine     distance between the finest marks, a part of {@code numbered}
 * @param unit     unit of the numbers
 */
public record RulerMarks(Length numbered, Length fine, LengthUnit unit) {

	private static final int ROOM_FOR_NUMBER = 58;
	private static final int ROOM_FOR_MARK = 5;

	/** Chooses the marks for a scale of pixels for a millimetre. */
	public static RulerMarks of(LengthUnit unit, double scale) {
		Length[] steps = steps(unit);
		Length numbered = steps[steps.length - 1];
		for (int i = steps.length - 1; i >= 0; i--) {
			if (pixels(steps[i], scale) >= ROOM_FOR_NUMBER) {
				numbered = steps[i];
			}
		}
		Length fine = numbered;
		for (Length step : steps) {
			if (pixels(step, scale) >= ROOM_FOR_MARK && numbered.isMultipleOf(step)) {
				fine = step;
				break;
			}
		}
		return new RulerMarks(numbered, fine, unit);
	}

	/** Returns the number at a mark, without the unit where that goes without saying. */
	public String text(Length at) {
		String text = LengthFormat.asShown(at, unit);
		return unit == LengthUnit.MILLIMETRE ? text.replace(" mm", "") : text; //$NON-NLS-1$ //$NON-NLS-2$
	}

	private static double pixels(Length length, double scale) {
		return length.approximateMillimetres() * scale;
	}

	private static Length[] steps(LengthUnit unit) {
		if (unit == LengthUnit.INCH) {
			return new Length[] { Length.ofInches(1, 64), Length.ofInches(1, 32), Length.ofInches(1, 16),
					Length.ofInches(1, 8), Length.ofInches(1, 4), Length.ofInches(1, 2),
					Length.ofInches(1), Length.ofInches(3), Length.ofInches(6), Length.ofInches(12), Length.ofInches(24),
					Length.ofInches(48), Length.ofInches(96), Length.ofInches(192) };
		}
		return new Length[] { new Length(Length.UNITS_PER_MILLIMETRE / 10), new Length(Length.UNITS_PER_MILLIMETRE / 2),
				Length.ofMillimetres(1), Length.ofMillimetres(5), Length.ofMillimetres(10),
				Length.ofMillimetres(50), Length.ofMillimetres(100), Length.ofMillimetres(500), Length.ofMillimetres(1000),
				Length.ofMillimetres(2000), Length.ofMillimetres(5000) };
	}
}
