// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.ghost;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.draw2d.geometry.PointList;

import wainscribe.layout.Member;
import wainscribe.layout.RailBand;
import wainscribe.layout.RoomDesign;
import wainscribe.model.Opening;
import wainscribe.model.Placed;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.model.outline.Outline;
import wainscribe.model.outline.Outlines;
import wainscribe.model.outline.WallShape;
import wainscribe.ui.elevation.table.Projection;

/** The outlines of what is on another wall, in pixels of the wall that is worked on. */
final class GhostOutlines {

	private final GhostPlan plan;
	private final Projection place;
	private final WallShape shape;
	private final List<PointList> outlines = new ArrayList<>();

	private GhostOutlines(GhostPlan plan, Projection place) {
		this.plan = plan;
		this.place = place;
		this.shape = WallShape.of(plan.wall());
	}

	/**
	 * Returns the outlines, each closed.
	 *
	 * @param design the design of the room
	 * @param plan   where the other wall comes to lie
	 * @param place  where the wall worked on lies
	 */
	static List<PointList> of(RoomDesign design, GhostPlan plan, Projection place) {
		GhostOutlines ghost = new GhostOutlines(plan, place);
		Wall wall = plan.wall();
		ghost.wall();
		design.layout().rail().ifPresent(ghost::rail);
		design.layout().of(wall).ifPresent(layout -> layout.frames().forEach(frame -> {
			ghost.frame(frame, Length.ZERO);
			ghost.frame(frame, design.layout().profile().face());
		}));
		design.layout().of(wall).ifPresent(layout -> layout.strips().forEach(strip -> ghost.frame(strip, Length.ZERO)));
		wall.getOpenings().forEach(ghost::opening);
		wall.getFixtures().forEach(ghost::thing);
		wall.getBoxes().forEach(ghost::thing);
		return ghost.outlines;
	}

	private void wall() {
		double end = mm(shape.length());
		add(0, 0, end, mm(shape.floorRight()), end, mm(shape.ceilingRight()), 0, mm(shape.ceilingLeft()));
	}

	private void rail(RailBand rail) {
		double end = mm(shape.length());
		double climb = mm(shape.floorRight());
		add(0, mm(rail.bottom()), end, mm(rail.bottom()) + climb, end, mm(rail.top()) + climb, 0, mm(rail.top()));
	}

	private void frame(Member frame, Length inset) {
		double in = mm(inset);
		add(mm(frame.x()) + in, mm(frame.y()) + in, mm(frame.right()) - in, mm(frame.y()) + mm(frame.rise()) + in,
				mm(frame.right()) - in, mm(frame.top()) + mm(frame.riseTop()) - in, mm(frame.x()) + in, mm(frame.top()) - in);
	}

	private void opening(Opening opening) {
		if (isPlaced(opening)) {
			box(Outlines.of(opening));
			box(Outlines.cased(opening));
		}
	}

	private void thing(Placed thing) {
		if (isPlaced(thing)) {
			box(Outlines.of(thing));
		}
	}

	private static boolean isPlaced(Placed thing) {
		return thing.getX() != null && thing.getY() != null;
	}

	/** The survey measures heights from the floor line. */
	private void box(Outline outline) {
		double lift = mm(shape.floorAt(outline.x0()));
		add(mm(outline.x0()), mm(outline.y0()) + lift, mm(outline.x1()), mm(outline.y0()) + lift, mm(outline.x1()),
				mm(outline.y1()) + lift, mm(outline.x0()), mm(outline.y1()) + lift);
	}

	private void add(double... corners) {
		PointList points = new PointList();
		for (int i = 0; i < corners.length; i += 2) {
			points.addPoint((int) Math.round(place.x(plan.x(corners[i]))), (int) Math.round(place.y(corners[i + 1] + plan.lift())));
		}
		outlines.add(points);
	}

	private static double mm(Length length) {
		return length.approximateMillimetres();
	}
}
