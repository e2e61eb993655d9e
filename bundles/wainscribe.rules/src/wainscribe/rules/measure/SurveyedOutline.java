// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.measure;

import wainscribe.layout.RoomDesign;
import wainscribe.layout.glass.GlassFrame;
import wainscribe.model.ExistingTrim;
import wainscribe.model.Fixture;
import wainscribe.model.Opening;
import wainscribe.model.OpeningKind;
import wainscribe.model.Placed;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.model.outline.Outline;
import wainscribe.model.outline.WallShape;

/**
 * Outlines of surveyed things in the elevation of their wall. Surveys measure heights from the floor line below the thing;
 * here they count from the finished floor at the wall's left end, as the layout does: on a slope by the floor line below the
 * left edge of the outline.
 */
public final class SurveyedOutline {

	private SurveyedOutline() {
	}

	/** Returns the outline of a thing with its heights above the floor line below it. */
	public static Outline aboveFloor(Placed placed) {
		return sized(orZero(placed.getX()), orZero(placed.getY()), orZero(placed.getWidth()), orZero(placed.getHeight()));
	}

	/**
	 * Returns the outline of a thing as measured; a moulding without a width reaches to the wall's end. A size below zero, a
	 * slip of the pen that the survey refuses, counts as nothing.
	 */
	public static Outline of(Placed placed) {
		Length x = orZero(placed.getX());
		Length y = orZero(placed.getY());
		Length width = orZero(placed.getWidth());
		if (placed instanceof ExistingTrim && placed.getWidth() == null && placed.eContainer() instanceof Wall wall) {
			width = orZero(wall.getLength()).minus(x);
		}
		return lifted(placed, sized(x, y, width, orZero(placed.getHeight())));
	}

	/** Returns what a fixture covers: a mirror that gets a frame with that frame, all else as measured. */
	public static Outline covered(RoomDesign design, Fixture fixture) {
		return GlassFrame.of(design.home(), design.room(), design.brief(), fixture)
				.map(frame -> lifted(fixture, frame.whole())).orElseGet(() -> of(fixture));
	}

	/** Returns the outline of an opening with its casing, a window also with its apron. */
	public static Outline cased(Opening opening) {
		Length casing = orZero(opening.getReveal()).plus(orZero(opening.getCasing())).max(Length.ZERO);
		Length below = Length.ZERO;
		if (opening.getKind() == OpeningKind.WINDOW) {
			below = opening.getApron() == null ? casing : opening.getApron().max(Length.ZERO);
		}
		return lifted(opening, aboveFloor(opening).grown(casing, below, casing));
	}

	/**
	 * Returns the fire opening of a fireplace: as measured, in the middle if only its size was, else the whole fireplace.
	 */
	public static Outline fireOpening(Fixture fireplace) {
		Outline whole = of(fireplace);
		if (fireplace.getOpeningWidth() == null || fireplace.getOpeningHeight() == null) {
			return whole;
		}
		Length x = fireplace.getOpeningX() == null ? whole.x0().plus(whole.width().minus(fireplace.getOpeningWidth()).dividedBy(2))
				: fireplace.getOpeningX();
		return sized(x, whole.y0(), fireplace.getOpeningWidth(), fireplace.getOpeningHeight());
	}

	/** Returns a length, zero where it was not measured. */
	public static Length orZero(Length length) {
		return length == null ? Length.ZERO : length;
	}

	private static Outline sized(Length x, Length y, Length width, Length height) {
		return Outline.ofSize(x, y, width.max(Length.ZERO), height.max(Length.ZERO));
	}

	private static Outline lifted(Placed placed, Outline outline) {
		if (!(placed.eContainer() instanceof Wall wall)) {
			return outline;
		}
		WallShape shape = WallShape.of(wall);
		if (!shape.isFloorSloped()) {
			return outline;
		}
		Length floor = shape.floorAt(outline.x0());
		return new Outline(outline.x0(), outline.y0().plus(floor), outline.x1(), outline.y1().plus(floor));
	}
}
