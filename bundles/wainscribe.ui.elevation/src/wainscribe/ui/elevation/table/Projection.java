// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.table;

import org.eclipse.draw2d.geometry.Rectangle;

import wainscribe.drawing.Bounds;
import wainscribe.model.length.Length;
import wainscribe.model.outline.Outline;

/**
 * Where a wall lies on the drawing table. The only place where lengths become pixels and pixels become lengths.
 *
 * @param scale  pixels for one millimetre on the wall, above zero
 * @param left   pixel column of the wall's left end
 * @param floor  pixel row of the finished floor at the wall's left end
 */
public record Projection(double scale, double left, double floor) {

	/** Returns the pixel column of a distance from the wall's left end in millimetres. */
	public double x(double millimetres) {
		return left + millimetres * scale;
	}

	/** Returns the pixel row of a height in millimetres. */
	public double y(double millimetres) {
		return floor - millimetres * scale;
	}

	/** Returns the pixel column of a distance from the wall's left end. */
	public int x(Length length) {
		return (int) Math.round(x(length.approximateMillimetres()));
	}

	/** Returns the pixel row of a height. */
	public int y(Length length) {
		return (int) Math.round(y(length.approximateMillimetres()));
	}

	/** Returns the pixels that an outline covers. */
	public Rectangle pixels(Outline outline) {
		int leftmost = x(outline.x0());
		int upper = y(outline.y1());
		return new Rectangle(leftmost, upper, x(outline.x1()) - leftmost, y(outline.y0()) - upper);
	}

	/** Returns the pixels that a part of a drawing covers, grown to whole ones. */
	public Rectangle pixels(Bounds bounds) {
		int x0 = (int) Math.floor(x(bounds.x0()));
		int y0 = (int) Math.floor(y(bounds.y1()));
		int x1 = (int) Math.ceil(x(bounds.x1()));
		int y1 = (int) Math.ceil(y(bounds.y0()));
		return new Rectangle(x0, y0, x1 - x0, y1 - y0);
	}

	/** Returns the length that a number of pixels stands for. */
	public Length length(int pixels) {
		return new Length(Math.round(pixels / scale * Length.UNITS_PER_MILLIMETRE));
	}

	/** Returns the distance from the wall's left end of a pixel column. */
	public Length xAt(int column) {
		return new Length(Math.round((column - left) / scale * Length.UNITS_PER_MILLIMETRE));
	}

	/** Returns the height of a pixel row. */
	public Length yAt(int row) {
		return new Length(Math.round((floor - row) / scale * Length.UNITS_PER_MILLIMETRE));
	}
}
