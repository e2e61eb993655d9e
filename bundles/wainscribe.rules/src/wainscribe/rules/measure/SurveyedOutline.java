// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.measure;

import wainscribe.model.ExistingTrim;
import wainscribe.model.Fixture;
import wainscribe.model.Opening;
import wainscribe.model.Placed;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.model.outline.Outline;
import wainscribe.model.outline.Outlines;
import wainscribe.model.outline.WallShape;

/**
 * Outlines of surveyed things in the elevation of their wall. Surveys measure heights from the floor line below the thing;
 * here they count from the finished floor at the wall's left end, as the layout does.
 */
public final class SurveyedOutline {

	private SurveyedOutline() {
	}

	/** Returns the outline of a thing as measured; a moulding without a width reaches to the wall's end. */
	public static Outline of(Placed placed) {
		Outline outline = Outlines.of(placed);
		if (placed instanceof ExistingTrim && placed.getWidth() == null && placed.eContainer() instanceof Wall wall
				&& wall.getLength() != null) {
			outline = new Outline(outline.x0(), outline.y0(), wall.getLength().max(outline.x0()), outline.y1());
		}
		return lifted(placed, outline);
	}

	/** Returns the outline of an opening with its casing. */
	public static Outline cased(Opening opening) {
		return lifted(opening, Outlines.cased(opening));
	}

	/** Returns the fire opening of a fireplace where it was measured, else the outline of the fireplace. */
	public static Outline fireOpening(Fixture fireplace) {
		if (fireplace.getOpeningX() == null || fireplace.getOpeningWidth() == null || fireplace.getOpeningHeight() == null) {
			return of(fireplace);
		}
		return lifted(fireplace, Outline.ofSize(fireplace.getOpeningX(), orZero(fireplace.getY()),
				fireplace.getOpeningWidth(), fireplace.getOpeningHeight()));
	}

	/** Returns a length, zero where it was not measured. */
	public static Length orZero(Length length) {
		return length == null ? Length.ZERO : length;
	}

	private static Outline lifted(Placed placed, Outline outline) {
		if (!(placed.eContainer() instanceof Wall wall)) {
			return outline;
		}
		WallShape shape = WallShape.of(wall);
		if (!shape.isFloorSloped()) {
			return outline;
		}
		Length floor = shape.floorAt(orZero(placed.getX()));
		return new Outline(outline.x0(), outline.y0().plus(floor), outline.x1(), outline.y1().plus(floor));
	}
}
