// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.snapping;

import java.util.ArrayList;
import java.util.List;

import wainscribe.commands.ElementWords;
import wainscribe.layout.FrameOutline;
import wainscribe.layout.RoomDesign;
import wainscribe.layout.RunLayout;
import wainscribe.model.Opening;
import wainscribe.model.Placed;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.model.outline.Outline;
import wainscribe.model.outline.Outlines;
import wainscribe.model.outline.WallShape;
import wainscribe.ui.elevation.Messages;

/**
 * The lines of a wall that things are drawn to when they are moved: casings, sills and heads, edges and axes of fixtures and
 * boxes, edges of frames, ends of runs, studs, base and rail.
 *
 * @param plumb plumb lines, by their distance from the wall's left end
 * @param level level lines, by their height
 */
public record SnapLines(List<SnapLine> plumb, List<SnapLine> level) {

	/** Copies the lists. */
	public SnapLines {
		plumb = List.copyOf(plumb);
		level = List.copyOf(level);
	}

	/**
	 * Collects the lines of a wall.
	 *
	 * @param design the design of the room
	 * @param wall   the wall
	 * @param moved  what is being moved and gives no lines: an element, a {@link FrameOutline}, or null
	 */
	public static SnapLines of(RoomDesign design, Wall wall, Object moved) {
		Collector lines = new Collector();
		lines.wall(wall);
		wall.getOpenings().stream().filter(opening -> opening != moved).forEach(lines::opening);
		wall.getFixtures().stream().filter(fixture -> fixture != moved).forEach(lines::thing);
		wall.getBoxes().stream().filter(box -> box != moved).forEach(lines::thing);
		wall.getServices().stream().filter(service -> service.getX() != null)
				.forEach(service -> lines.plumb.add(new SnapLine(service.getX(), name(service))));
		design.layout().of(wall).ifPresent(layout -> {
			layout.runs().forEach(run -> lines.run(run, design.layout().gap()));
			layout.frames().filter(frame -> !frame.equals(moved)).forEach(lines::frame);
		});
		lines.level.add(new SnapLine(design.brief().base(), Messages.SnapLines_Base));
		if (!(moved instanceof wainscribe.layout.RailBand)) {
			design.layout().rail().ifPresent(rail -> {
				lines.level.add(new SnapLine(rail.bottom(), Messages.SnapLines_Rail));
				lines.level.add(new SnapLine(rail.top(), Messages.SnapLines_Rail));
			});
		}
		return new SnapLines(lines.plumb, lines.level);
	}

	private static String name(Placed element) {
		return element.getName() == null ? ElementWords.of(element) : element.getName();
	}

	/** Gathers lines. */
	private static final class Collector {

		private final List<SnapLine> plumb = new ArrayList<>();
		private final List<SnapLine> level = new ArrayList<>();

		void wall(Wall wall) {
			Length length = WallShape.of(wall).length();
			plumb.add(new SnapLine(Length.ZERO, Messages.SnapLines_Corner));
			plumb.add(new SnapLine(length, Messages.SnapLines_Corner));
			plumb.add(new SnapLine(length.dividedBy(2), Messages.SnapLines_MiddleOfWall));
		}

		void opening(Opening opening) {
			edges(Outlines.of(opening), name(opening));
			edges(Outlines.cased(opening), name(opening));
			axes(Outlines.of(opening), name(opening));
		}

		void thing(Placed thing) {
			edges(Outlines.of(thing), name(thing));
			axes(Outlines.of(thing), name(thing));
		}

		void frame(FrameOutline frame) {
			if (frame.isRaked()) {
				plumb.add(new SnapLine(frame.x(), frame.id()));
				plumb.add(new SnapLine(frame.right(), frame.id()));
			} else {
				edges(Outline.ofSize(frame.x(), frame.y(), frame.width(), frame.height()), frame.id());
			}
		}

		/** Frames like to stand one gap from the ends of their run. */
		void run(RunLayout run, Length gap) {
			plumb.add(new SnapLine(run.x0().plus(gap), Messages.SnapLines_OneGap));
			plumb.add(new SnapLine(run.x1().minus(gap), Messages.SnapLines_OneGap));
		}

		private void edges(Outline outline, String name) {
			plumb.add(new SnapLine(outline.x0(), name));
			plumb.add(new SnapLine(outline.x1(), name));
			level.add(new SnapLine(outline.y0(), name));
			level.add(new SnapLine(outline.y1(), name));
		}

		private void axes(Outline outline, String name) {
			plumb.add(new SnapLine(outline.x0().plus(outline.width().dividedBy(2)), name));
			level.add(new SnapLine(outline.y0().plus(outline.height().dividedBy(2)), name));
		}
	}
}
