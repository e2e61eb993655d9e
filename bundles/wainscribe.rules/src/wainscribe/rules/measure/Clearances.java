// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.measure;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import wainscribe.layout.RoomDesign;
import wainscribe.model.Placed;
import wainscribe.model.length.Length;
import wainscribe.model.outline.Outline;
import wainscribe.rules.measure.WallStrips.Nearest;

/** Distances between things that may be on different walls of a room. */
public final class Clearances {

	private final RoomPlan plan;
	private final List<Strip> strips;

	/** Prepares the distances of a room. */
	public Clearances(RoomDesign design) {
		this.plan = new RoomPlan(design.room());
		this.strips = design.room().getWalls().stream().flatMap(wall -> WallStrips.of(design, wall).all().stream()).toList();
	}

	/**
	 * Returns the margin that a thing keeps from a moulding: on the same wall by their outlines, round a corner by the greater
	 * of the distance over the floor and the difference in height.
	 */
	public Length between(Placed thing, Outline outline, Strip strip) {
		if (strip.wall() == thing.eContainer()) {
			return strip.shape().gapTo(outline);
		}
		Outline bounds = strip.shape().bounds();
		Length over = plan.of(thing).distanceTo(plan.of(strip.wall(), bounds.x0(), bounds.x1(), strip.thickness()));
		return over.max(bounds.clearY(outline));
	}

	/** Returns the shortest distance between two things over the floor; along the wall if both are on one. */
	public Length overFloor(Placed one, Placed other) {
		if (one.eContainer() == other.eContainer()) {
			return SurveyedOutline.of(one).clearX(SurveyedOutline.of(other));
		}
		return plan.of(one).distanceTo(plan.of(other));
	}

	/** Returns the margin between two things: the greater of the distance over the floor and the difference in height. */
	public Length between(Placed one, Placed other) {
		return overFloor(one, other).max(SurveyedOutline.of(one).clearY(SurveyedOutline.of(other)));
	}

	/** Returns the moulding of the room that is nearest to a thing; empty in a room without mouldings. */
	public Optional<Nearest> nearestStrip(Placed thing, Outline outline) {
		return strips.stream().map(strip -> new Nearest(strip, between(thing, outline, strip)))
				.min(Comparator.comparing(Nearest::gap));
	}
}
