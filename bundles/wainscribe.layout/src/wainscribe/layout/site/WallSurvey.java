// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;

import wainscribe.layout.clearance.Blockers;
import wainscribe.layout.clearance.Kept;
import wainscribe.layout.solver.Barrier;
import wainscribe.layout.solver.Island;
import wainscribe.model.Box;
import wainscribe.model.Fixture;
import wainscribe.model.Opening;
import wainscribe.model.OpeningKind;
import wainscribe.model.Placed;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.model.outline.Outline;
import wainscribe.model.outline.Outlines;
import wainscribe.model.outline.WallShape;

/**
 * What is on a wall, as barriers and islands in units of 1/8000 mm.
 * <p>
 * The survey measures y from the floor line; here it is from the floor at the wall's left end, so on stairs a thing is
 * lifted by the floor line under its left edge.
 */
final class WallSurvey {

	private final WallShape shape;
	private final boolean combustible;
	private final Function<Fixture, Outline> covered;
	private final List<Placed> elements = new ArrayList<>();
	private final List<Barrier> barriers = new ArrayList<>();
	private final List<Island> islands = new ArrayList<>();

	/**
	 * Reads a wall.
	 *
	 * @param combustible whether the mouldings can burn
	 * @param covered     what a fixture covers with all that is put round it, heights above the floor line
	 */
	WallSurvey(Wall wall, boolean combustible, Function<Fixture, Outline> covered) {
		this.combustible = combustible;
		this.covered = Objects.requireNonNull(covered);
		shape = WallShape.of(wall);
		wall.getOpenings().forEach(this::add);
		wall.getFixtures().forEach(this::add);
		wall.getBoxes().forEach(this::add);
	}

	private void add(Opening opening) {
		if (!isReadable(opening) || isNegative(opening.getCasing()) || isNegative(opening.getReveal())
				|| isNegative(opening.getApron())) {
			return;
		}
		Barrier.Kind kind = opening.getKind() == OpeningKind.WINDOW ? Barrier.Kind.WINDOW : Barrier.Kind.DOOR;
		barriers.add(new Barrier(box(Outlines.cased(opening)), 0, 0, 0, kind, number(opening)));
	}

	private void add(Box box) {
		if (isReadable(box)) {
			add(box, ThingRole.of(box), Outlines.of(box));
		}
	}

	private void add(Fixture fixture) {
		if (!isReadable(fixture)) {
			return;
		}
		ThingRole role = ThingRole.of(fixture);
		add(fixture, role, covered.apply(fixture));
		if (combustible && role == ThingRole.BLOCKER) {
			addHeat(fixture, elements.size() - 1);
		}
	}

	/** A size below zero is a slip of the pen that the survey's checks report; here it must not stop the rest. */
	private static boolean isReadable(Placed placed) {
		return !isNegative(placed.getWidth()) && !isNegative(placed.getHeight());
	}

	private static boolean isNegative(Length length) {
		return length != null && length.signum() < 0;
	}

	private void add(Placed placed, ThingRole role, Outline outline) {
		int number = number(placed);
		if (role == ThingRole.BLOCKER) {
			barriers.add(new Barrier(box(outline), 0, 0, 0, Barrier.Kind.FIXTURE, number));
		} else if (role.isIsland()) {
			islands.add(new Island(box(outline), role.margin(), role.warning(), number));
		}
	}

	private void addHeat(Fixture fixture, int number) {
		List<Kept> kept = Blockers.of(fixture, combustible);
		for (Kept heat : kept.subList(1, kept.size())) {
			barriers.add(new Barrier(box(heat.outline()), heat.sides().units(), heat.below().units(), heat.above().units(),
					Barrier.Kind.FIXTURE, number));
		}
	}

	private int number(Placed placed) {
		elements.add(placed);
		return elements.size() - 1;
	}

	private wainscribe.layout.solver.Box box(Outline outline) {
		long lift = shape.floorAt(outline.x0()).units();
		return new wainscribe.layout.solver.Box(outline.x0().units(), outline.y0().units() + lift, outline.x1().units(),
				outline.y1().units() + lift);
	}

	/** Returns the surveyed elements by their numbers. */
	List<Placed> elements() {
		return elements;
	}

	List<Barrier> barriers() {
		return barriers;
	}

	List<Island> islands() {
		return islands;
	}
}
