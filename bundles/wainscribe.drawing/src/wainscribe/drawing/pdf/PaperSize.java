// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing.pdf;

import wainscribe.model.length.LengthUnit;

/**
 * A sheet of paper, millimetres (ISO 216; letter and tabloid ANSI/ASME Y14.1).
 *
 * @param name   its name
 * @param width  as it lies
 * @param height as it lies
 */
public record PaperSize(String name, double width, double height) {

	private static final double LETTER_SHORT = 215.9;
	private static final double LETTER_LONG = 279.4;
	private static final double TABLOID_LONG = 431.8;

	/** Returns the small sheet used with a unit, upright: A4 or letter. */
	public static PaperSize small(LengthUnit unit) {
		return unit == LengthUnit.INCH ? new PaperSize("Letter", LETTER_SHORT, LETTER_LONG) : new PaperSize("A4", 210, 297);
	}

	/** Returns the large sheet used with a unit, upright: A3 or tabloid. */
	public static PaperSize large(LengthUnit unit) {
		return unit == LengthUnit.INCH ? new PaperSize("Tabloid", LETTER_LONG, TABLOID_LONG) : new PaperSize("A3", 297, 420);
	}

	/** Returns the sheet turned by a quarter. */
	public PaperSize turned() {
		return new PaperSize(name, height, width);
	}
}
