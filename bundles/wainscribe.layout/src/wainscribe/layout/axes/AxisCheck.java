// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.axes;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.osgi.util.NLS;

import wainscribe.layout.FrameOutline;
import wainscribe.layout.RoomLayout;
import wainscribe.layout.Tier;
import wainscribe.layout.WallLayout;
import wainscribe.model.Axis;
import wainscribe.model.Fixture;
import wainscribe.model.FixtureType;
import wainscribe.model.Placed;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.model.outline.Outline;
import wainscribe.model.outline.Outlines;
import wainscribe.model.outline.WallShape;

/** Compares a layout with the axes of its walls: those that are marked, and those of what stands in the middle of a wall. */
public final class AxisCheck {

	/** A thing this near to the middle of its wall is meant to be there: half of what reads as equal (common practice). */
	private static final Length MEANT = new Length(25 * Length.UNITS_PER_MILLIMETRE / 2);

	private AxisCheck() {
	}

	/** Returns the axes of a wall from left to right: the marked ones, and those of centred doors, windows and fixtures. */
	public static List<WallAxis> axes(Wall wall) {
		List<WallAxis> axes = new ArrayList<>();
		for (Axis axis : wall.getAxes()) {
			if (axis.getAt() != null) {
				axes.add(new WallAxis(wall, named(axis.getName()) ? axis.getName() : Messages.AxisCheck_Marked, axis.getAt(), axis));
			}
		}
		Length middle = WallShape.of(wall).length().dividedBy(2);
		Stream.concat(wall.getOpenings().stream(), wall.getFixtures().stream()).map(Placed.class::cast)
				.filter(thing -> thing.getX() != null && thing.getWidth() != null && !isAlong(thing)).forEach(thing -> {
					Outline outline = Outlines.of(thing);
					Length centre = outline.x0().plus(outline.width().dividedBy(2));
					boolean known = axes.stream().anyMatch(axis -> axis.at().equals(centre));
					if (!known && !centre.minus(middle).abs().isMoreThan(MEANT)) {
						axes.add(new WallAxis(wall, NLS.bind(Messages.AxisCheck_Of, named(thing.getName()) ? thing.getName()
								: thing.eClass().getName()), centre, null));
					}
				});
		axes.sort(Comparator.comparing(WallAxis::at));
		return axes;
	}

	/** Compares all walls of a layout with their axes, in walking order; nothing where a tier has no frames. */
	public static List<AxisFit> of(RoomLayout layout) {
		return layout.walls().stream().flatMap(wall -> of(wall).stream()).toList();
	}

	/** Compares one wall with its axes. */
	public static List<AxisFit> of(WallLayout layout) {
		List<AxisFit> fits = new ArrayList<>();
		for (WallAxis axis : axes(layout.wall())) {
			Arrays.stream(Tier.values()).forEach(tier -> fit(axis, tier, layout).ifPresent(fits::add));
		}
		return fits;
	}

	/** Of a frame and a space equally near the frame is named. */
	private static Optional<AxisFit> fit(WallAxis axis, Tier tier, WallLayout layout) {
		List<FrameOutline> frames = layout.frames().filter(frame -> frame.tier() == tier)
				.sorted(Comparator.comparing(FrameOutline::x)).toList();
		List<AxisFit> fits = new ArrayList<>();
		for (FrameOutline frame : frames) {
			fits.add(fit(axis, tier, List.of(frame.id()), frame.x(), frame.right()));
		}
		for (int i = 1; i < frames.size(); i++) {
			FrameOutline left = frames.get(i - 1);
			FrameOutline right = frames.get(i);
			if (!left.right().isMoreThan(right.x())) {
				fits.add(fit(axis, tier, List.of(left.id(), right.id()), left.right(), right.x()));
			}
		}
		return fits.stream().min(Comparator.comparing(fit -> fit.off().abs()));
	}

	private static AxisFit fit(WallAxis axis, Tier tier, List<String> ids, Length from, Length to) {
		return new AxisFit(axis, tier, ids, from.plus(to.minus(from).dividedBy(2)).minus(axis.at()));
	}

	/** A handrail runs along a wall and has no axis. */
	private static boolean isAlong(Placed thing) {
		return thing instanceof Fixture fixture && fixture.getType() == FixtureType.HANDRAIL;
	}

	private static boolean named(String name) {
		return name != null && !name.isBlank();
	}
}
