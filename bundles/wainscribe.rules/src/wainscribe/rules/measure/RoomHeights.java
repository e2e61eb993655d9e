// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.measure;

import java.util.Optional;

import wainscribe.layout.RoomDesign;
import wainscribe.layout.Tier;
import wainscribe.model.ExistingTrim;
import wainscribe.model.TrimType;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.model.outline.WallShape;

/**
 * Between which heights the tiers of a room lie, from the survey and the brief alone: base top, rail, crown, ceiling. Base
 * and crown are level all round, so the highest kept base and the deepest kept crown count.
 */
public final class RoomHeights {

	private final RoomDesign design;
	private final Length baseTop;
	private final Length crownDrop;

	/** Finds the heights of a room. */
	public RoomHeights(RoomDesign design) {
		this.design = design;
		this.baseTop = kept(TrimType.BASE).orElse(design.brief().base());
		this.crownDrop = kept(TrimType.CROWN).orElse(design.brief().crown());
	}

	/** Returns the top of the base above the floor line. */
	public Length baseTop() {
		return baseTop;
	}

	/**
	 * Returns the lower edge of a tier at a place on a wall.
	 *
	 * @return height from the finished floor at the wall's left end; empty for tiers of contributed patterns
	 */
	public Optional<Length> lowerEdge(Wall wall, Tier tier, Length x) {
		Length floor = WallShape.of(wall).floorAt(x);
		return switch (tier) {
			case LOWER, FULL -> Optional.of(floor.plus(baseTop));
			case UPPER -> design.layout().rail().map(rail -> floor.plus(rail.top()));
			case UNDER, OVER, EXTRA -> Optional.empty();
		};
	}

	/**
	 * Returns the upper edge of a tier at a place on a wall.
	 *
	 * @return height from the finished floor at the wall's left end; empty for tiers of contributed patterns and where the
	 *         ceiling was not measured
	 */
	public Optional<Length> upperEdge(Wall wall, Tier tier, Length x) {
		WallShape shape = WallShape.of(wall);
		return switch (tier) {
			case LOWER -> design.layout().rail().map(rail -> shape.floorAt(x).plus(rail.bottom()));
			case UPPER, FULL -> Optional.of(shape.ceilingAt(x)).filter(ceiling -> ceiling.signum() > 0)
					.map(ceiling -> ceiling.minus(crownDrop));
			case UNDER, OVER, EXTRA -> Optional.empty();
		};
	}

	private Optional<Length> kept(TrimType type) {
		return design.room().getWalls().stream().flatMap(wall -> wall.getTrims().stream())
				.filter(trim -> trim.getType() == type && !Boolean.FALSE.equals(trim.getKeep()))
				.map(trim -> extent(trim, type)).filter(extent -> extent.signum() > 0).max(Length::compareTo);
	}

	private static Length extent(ExistingTrim trim, TrimType type) {
		Length face = SurveyedOutline.orZero(trim.getHeight());
		return type == TrimType.BASE ? face.plus(SurveyedOutline.orZero(trim.getY())) : face;
	}
}
