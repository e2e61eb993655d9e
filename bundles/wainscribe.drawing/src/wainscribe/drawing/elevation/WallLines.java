// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing.elevation;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

import wainscribe.drawing.Bounds;
import wainscribe.drawing.Point;
import wainscribe.model.Fixture;
import wainscribe.model.FixtureType;
import wainscribe.model.Wall;
import wainscribe.model.outline.Outline;
import wainscribe.model.outline.Outlines;
import wainscribe.model.outline.WallShape;

/** Floor and ceiling line of a wall for painting, and what interrupts a band that follows them. */
final class WallLines {

	/** Large things that mouldings stop at; behind a toilet, a bidet or a basin they run on. */
	private static final Set<FixtureType> STOPS = EnumSet.of(FixtureType.VANITY, FixtureType.SINK, FixtureType.TUB,
			FixtureType.SHOWER, FixtureType.HEATER, FixtureType.RADIATOR, FixtureType.CABINET, FixtureType.RANGE,
			FixtureType.COOKTOP, FixtureType.HOOD, FixtureType.APPLIANCE, FixtureType.FIREPLACE, FixtureType.MIRROR,
			FixtureType.WASHER);

	private final Wall wall;
	private final double length;
	private final double floorRight;
	private final double ceilingLeft;
	private final double ceilingRight;

	WallLines(Wall wall) {
		this.wall = wall;
		WallShape shape = WallShape.of(wall);
		length = shape.length().approximateMillimetres();
		floorRight = shape.floorRight().approximateMillimetres();
		ceilingLeft = shape.ceilingLeft().approximateMillimetres();
		ceilingRight = shape.ceilingRight().approximateMillimetres();
	}

	double length() {
		return length;
	}

	double floor(double x) {
		return length == 0 ? 0 : floorRight * x / length;
	}

	double ceiling(double x) {
		return length == 0 ? ceilingLeft : ceilingLeft + (ceilingRight - ceilingLeft) * x / length;
	}

	boolean isFloorSloped() {
		return floorRight != 0;
	}

	Bounds bounds() {
		return new Bounds(0, Math.min(0, floorRight), length,
				Math.max(Math.max(ceilingLeft, ceilingRight), Math.max(0, floorRight)));
	}

	/** Returns the corners of a band that follows the floor line. */
	List<Point> overFloor(Span span, double bottom, double top) {
		return List.of(new Point(span.from(), floor(span.from()) + bottom), new Point(span.to(), floor(span.to()) + bottom),
				new Point(span.to(), floor(span.to()) + top), new Point(span.from(), floor(span.from()) + top));
	}

	/** Returns the corners of a band that follows the ceiling line. */
	List<Point> underCeiling(Span span, double drop) {
		return List.of(new Point(span.from(), ceiling(span.from()) - drop), new Point(span.to(), ceiling(span.to()) - drop),
				new Point(span.to(), ceiling(span.to())), new Point(span.from(), ceiling(span.from())));
	}

	/** Returns the stretches in which a band over the floor line is free. */
	List<Span> clearOverFloor(double bottom, double top) {
		return clear(span -> Math.min(floor(span.from()), floor(span.to())) + bottom,
				span -> Math.max(floor(span.from()), floor(span.to())) + top);
	}

	/** Returns the stretches in which a band under the ceiling line is free. */
	List<Span> clearUnderCeiling(double drop) {
		return clear(span -> Math.min(ceiling(span.from()), ceiling(span.to())) - drop,
				span -> Math.max(ceiling(span.from()), ceiling(span.to())));
	}

	private List<Span> clear(Height lower, Height upper) {
		List<Span> stops = new ArrayList<>();
		stops().forEach(outline -> {
			Span span = new Span(outline.x0().approximateMillimetres(), outline.x1().approximateMillimetres());
			if (outline.y0().approximateMillimetres() < upper.at(span)
					&& outline.y1().approximateMillimetres() > lower.at(span)) {
				stops.add(span);
			}
		});
		return new Span(0, length).without(stops);
	}

	private Stream<Outline> stops() {
		return Stream.concat(wall.getOpenings().stream().map(opening -> Sketches.onWall(Outlines.cased(opening), opening)),
				wall.getFixtures().stream().filter(WallLines::stops)
						.map(fixture -> Sketches.onWall(Outlines.of(fixture), fixture)));
	}

	private static boolean stops(Fixture fixture) {
		return STOPS.contains(fixture.getType()) && !Boolean.TRUE.equals(fixture.getBehind());
	}

	/** A height of a band over a stretch. */
	@FunctionalInterface
	private interface Height {
		double at(Span span);
	}
}
