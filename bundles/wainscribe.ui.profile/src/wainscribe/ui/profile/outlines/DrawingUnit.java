// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile.outlines;

import wainscribe.ui.profile.Messages;

/** What one unit of a drawing may be. */
public enum DrawingUnit {

	/** Millimetres. */
	MILLIMETRE(1),
	/** Centimetres. */
	CENTIMETRE(10),
	/** Inches. */
	INCH(25.4),
	/** Pixels of the web: 96 to the inch (CSS Values and Units). */
	PIXEL(25.4 / 96),
	/** Points of printers: 72 to the inch. */
	POINT(25.4 / 72);

	private final double millimetres;

	DrawingUnit(double millimetres) {
		this.millimetres = millimetres;
	}

	/** Returns how many millimetres it is. */
	public double millimetres() {
		return millimetres;
	}

	/** Returns what it is called. */
	public String words() {
		return switch (this) {
			case MILLIMETRE -> Messages.DrawingUnit_Millimetre;
			case CENTIMETRE -> Messages.DrawingUnit_Centimetre;
			case INCH -> Messages.DrawingUnit_Inch;
			case PIXEL -> Messages.DrawingUnit_Pixel;
			case POINT -> Messages.DrawingUnit_Point;
		};
	}
}
