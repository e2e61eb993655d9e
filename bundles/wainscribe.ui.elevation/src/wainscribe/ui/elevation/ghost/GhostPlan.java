// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.ghost;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.ui.elevation.table.Ghost;

/**
 * Where the things of another wall come to lie on the wall that is worked on. For painting only, so in floating point.
 * <p>
 * The opposite wall is carried straight across the floor plan: what stands face to face in the room lies at the same place,
 * so its left and right are changed over. An adjoining wall is folded flat about the corner the two share: what is as far
 * from the corner lies at the same place.
 *
 * @param wall   the other wall
 * @param origin where its left end comes to lie, in millimetres from the left end of the wall worked on
 * @param stretch how far it reaches for each of its millimetres; below zero, since left and right are changed over
 * @param lift   how much higher its floor line begins, in millimetres
 */
public record GhostPlan(Wall wall, double origin, double stretch, double lift) {

	private static final double RIGHT_ANGLE = 90;
	private static final double HALF_TURN = 180;
	/** Walls that face each other less than this are not opposite: about 45 degrees. */
	private static final double FACING = -0.7;
	private static final double SAME = 1e-6;

	/** Refuses null. */
	public GhostPlan {
		Objects.requireNonNull(wall);
	}

	/** Returns where a distance from the other wall's left end comes to lie, in millimetres. */
	public double x(double along) {
		return origin + along * stretch;
	}

	/**
	 * Finds the other wall.
	 *
	 * @param walls the walls in walking order
	 * @param on    the wall worked on
	 * @param ghost which other wall
	 * @return where it comes to lie; empty where there is none
	 */
	public static Optional<GhostPlan> of(List<Wall> walls, Wall on, Ghost ghost) {
		int index = walls.indexOf(on);
		if (index < 0 || walls.size() < 2) {
			return Optional.empty();
		}
		return switch (ghost) {
			case NONE -> Optional.empty();
			case LEFT -> Optional.of(folded(walls, index, Math.floorMod(index - 1, walls.size()), true));
			case RIGHT -> Optional.of(folded(walls, index, (index + 1) % walls.size(), false));
			case OPPOSITE -> opposite(walls, index);
		};
	}

	private static GhostPlan folded(List<Wall> walls, int on, int other, boolean left) {
		double corner = left ? length(walls.get(other)) : length(walls.get(on));
		return new GhostPlan(walls.get(other), corner, -1, floor(walls, other) - floor(walls, on));
	}

	/** Of walls that face this one as squarely, the one that covers more of it is taken. */
	private static Optional<GhostPlan> opposite(List<Wall> walls, int on) {
		List<Side> plan = plan(walls);
		Side here = plan.get(on);
		GhostPlan best = null;
		for (int i = 0; i < walls.size(); i++) {
			Side there = plan.get(i);
			double facing = there.dx() * here.dx() + there.dy() * here.dy();
			if (i != on && facing < FACING) {
				double origin = (there.x() - here.x()) * here.dx() + (there.y() - here.y()) * here.dy();
				GhostPlan found = new GhostPlan(walls.get(i), origin, facing, floor(walls, i) - floor(walls, on));
				boolean better = best == null || found.stretch < best.stretch - SAME
						|| found.stretch < best.stretch + SAME && found.cover(walls.get(on)) > best.cover(walls.get(on));
				best = better ? found : best;
			}
		}
		return Optional.ofNullable(best);
	}

	private double cover(Wall on) {
		double from = Math.min(origin, x(length(wall)));
		double to = Math.max(origin, x(length(wall)));
		return Math.min(to, length(on)) - Math.max(from, 0);
	}

	/** Lays the walls out on the floor: each turns to the right by what its inside angle leaves of a half turn. */
	private static List<Side> plan(List<Wall> walls) {
		List<Side> plan = new ArrayList<>();
		double x = 0;
		double y = 0;
		double heading = 0;
		for (Wall wall : walls) {
			double dx = Math.cos(Math.toRadians(heading));
			double dy = Math.sin(Math.toRadians(heading));
			plan.add(new Side(x, y, dx, dy));
			x += length(wall) * dx;
			y += length(wall) * dy;
			heading -= HALF_TURN - (wall.getAngle() == null ? RIGHT_ANGLE : wall.getAngle().doubleValue());
		}
		return plan;
	}

	private static double floor(List<Wall> walls, int index) {
		return walls.subList(0, index).stream().map(Wall::getFloorRight).filter(Objects::nonNull)
				.mapToDouble(Length::approximateMillimetres).sum();
	}

	private static double length(Wall wall) {
		return wall.getLength() == null ? 0 : wall.getLength().approximateMillimetres();
	}

	/** The left end of a wall on the floor, and which way it runs. */
	private record Side(double x, double y, double dx, double dy) {
	}
}
