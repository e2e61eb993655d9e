// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile.desk;

import org.eclipse.draw2d.geometry.Point;
import org.eclipse.draw2d.geometry.Rectangle;

import wainscribe.model.length.Length;
import wainscribe.profile.section.SectionBox;
import wainscribe.profile.section.Spot;

/**
 * Between a section and the pixels of the desk: the wall line stands upright, up the wall is up, out from the wall is to the
 * right.
 *
 * @param scale pixels for a millimetre
 */
public record Plane(double scale) {

	/** Returns the pixel column of a distance from the wall line in millimetres, with its fraction. */
	public double column(double out) {
		return out * scale;
	}

	/** Returns the pixel row of a height in millimetres, with its fraction. */
	public double row(double up) {
		return -up * scale;
	}

	/** Returns the pixel nearest to a point. */
	public Point pixel(Spot spot) {
		return new Point((int) Math.round(column(spot.y())), (int) Math.round(row(spot.x())));
	}

	/** Returns the point under a pixel. */
	public Spot spot(Point pixel) {
		return new Spot(-pixel.y / scale, pixel.x / scale);
	}

	/** Returns the length that a number of pixels stands for. */
	public Length length(double pixels) {
		return Spot.nearest(pixels / scale);
	}

	/** Returns the pixels that a box covers. */
	public Rectangle pixels(SectionBox box) {
		Point corner = pixel(new Spot(box.high().x().approximateMillimetres(), box.low().y().approximateMillimetres()));
		Point other = pixel(new Spot(box.low().x().approximateMillimetres(), box.high().y().approximateMillimetres()));
		return new Rectangle(corner.x, corner.y, other.x - corner.x, other.y - corner.y);
	}
}
