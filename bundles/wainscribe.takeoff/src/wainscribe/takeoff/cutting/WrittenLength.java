// SPDX-License-Identifier: EPL-2.0
package wainscribe.takeoff.cutting;

import java.util.Objects;

import wainscribe.model.length.Length;
import wainscribe.model.length.LengthParser;
import wainscribe.model.length.LengthSyntaxException;
import wainscribe.model.length.LengthUnit;

/**
 * A length of a cutting job as it was written.
 *
 * @param length what it means
 * @param isBare whether it was read as millimetres only because nothing says its unit
 */
public record WrittenLength(Length length, boolean isBare) {

	/** Refuses nulls. */
	public WrittenLength {
		Objects.requireNonNull(length, "length"); //$NON-NLS-1$
	}

	/**
	 * Reads a length.
	 *
	 * @param text  what was written
	 * @param units unit of bare numbers; null if nothing says one: they are millimetres, as in the results for scripts
	 * @return the length
	 * @throws LengthSyntaxException if the text is no length, or one that no tape has
	 */
	public static WrittenLength of(String text, LengthUnit units) {
		if (units != null) {
			return new WrittenLength(new LengthParser(units).parse(text), false);
		}
		Length length = new LengthParser(LengthUnit.MILLIMETRE).parse(text);
		return new WrittenLength(length, !isTheSameInInches(length, text));
	}

	private static boolean isTheSameInInches(Length length, String text) {
		try {
			return length.equals(new LengthParser(LengthUnit.INCH).read(text).nearest());
		} catch (LengthSyntaxException e) {
			return false; // a length in millimetres that is too long in inches: the unit counts
		}
	}
}
