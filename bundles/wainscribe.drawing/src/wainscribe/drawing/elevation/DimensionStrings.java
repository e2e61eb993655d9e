// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing.elevation;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

import wainscribe.drawing.Bounds;
import wainscribe.drawing.LayerName;
import wainscribe.drawing.Role;
import wainscribe.drawing.Subject;
import wainscribe.layout.FrameOutline;
import wainscribe.layout.RoomDesign;
import wainscribe.layout.StripOutline;
import wainscribe.layout.WallLayout;
import wainscribe.model.Opening;
import wainscribe.model.TrimType;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.model.outline.Outline;
import wainscribe.model.outline.Outlines;
import wainscribe.model.outline.WallShape;

/**
 * The dimension strings of an elevation. Each has a strip of its own outside the wall and keeps its texts apart along
 * it, so no text ever covers another.
 */
final class DimensionStrings {

	private static final double FROM_WALL = 5;
	private static final double BETWEEN = 3;
	private static final double BESIDE_WALL = 4;
	private static final double BELOW_FLOOR = 1.5;

	private final Sheet sheet;
	private final RoomDesign design;
	private final Wall wall;
	private final WallShape shape;

	DimensionStrings(Sheet sheet, RoomDesign design, Wall wall) {
		this.sheet = sheet;
		this.design = design;
		this.wall = wall;
		shape = WallShape.of(wall);
	}

	void draw(Bounds bounds) {
		if (shape.length().signum() <= 0) {
			return;
		}
		double y = bounds.y0() - sheet.paper(FROM_WALL);
		List<Mark> frames = frameMarks();
		if (frames.size() > 2 || wall.getOpenings().isEmpty()) {
			extensions(frames, bounds, y);
			y = new LevelString(sheet, y).running(frames) - sheet.paper(BETWEEN);
		}
		if (!wall.getOpenings().isEmpty()) {
			new LevelString(sheet, y).chain(openingMarks());
		}
		double least = bounds.y0() - sheet.paper(BELOW_FLOOR);
		new PlumbString(sheet, -sheet.paper(BESIDE_WALL), false).running(heights(), least);
		List<Mark> openings = openingHeights();
		if (openings.size() > 1) {
			new PlumbString(sheet, bounds.x1() + sheet.paper(BESIDE_WALL), true).running(openings, least);
		}
	}

	/** Thin lines that lead from the foot of the wall to the marks. */
	private void extensions(List<Mark> marks, Bounds bounds, double y) {
		for (Mark mark : marks) {
			double x = mark.at().approximateMillimetres();
			sheet.line(LayerName.DIMENSION, Subject.NONE, Role.DIMENSION_LINE, x, bounds.y0() - sheet.paper(BELOW_FLOOR), x, y);
		}
	}

	/** Frames by both edges; strips all have one face, so their left edges say it all. */
	private List<Mark> frameMarks() {
		List<Mark> marks = new ArrayList<>(ends());
		frames().forEach(frame -> {
			marks.add(new Mark(frame.x(), Subject.frame(frame.id())));
			marks.add(new Mark(frame.right(), Subject.frame(frame.id())));
		});
		strips().filter(strip -> strip.kind().isUpright()).forEach(strip -> marks.add(new Mark(strip.x(), Subject.strip(strip.id()))));
		return ordered(marks);
	}

	private List<Mark> openingMarks() {
		List<Mark> marks = new ArrayList<>(ends());
		for (Opening opening : wall.getOpenings()) {
			Outline outline = Outlines.of(opening);
			marks.add(new Mark(outline.x0(), Subject.element(opening.getId())));
			marks.add(new Mark(outline.x1(), Subject.of(Subject.Kind.WALL)));
		}
		return ordered(marks);
	}

	private List<Mark> heights() {
		List<Mark> marks = new ArrayList<>();
		marks.add(new Mark(Length.ZERO, Subject.of(Subject.Kind.WALL)));
		marks.add(new Mark(shape.ceilingLeft(), Subject.of(Subject.Kind.WALL)));
		if (!"none".equals(design.layout().pattern())) {
			marks.add(baseTop());
			design.layout().rail().ifPresent(rail -> {
				marks.add(new Mark(rail.bottom(), Subject.of(Subject.Kind.RAIL)));
				marks.add(new Mark(rail.top(), Subject.of(Subject.Kind.RAIL)));
			});
			frames().stream().filter(frame -> !frame.isRaked()).forEach(frame -> {
				marks.add(new Mark(frame.y(), Subject.frame(frame.id())));
				marks.add(new Mark(frame.top(), Subject.frame(frame.id())));
			});
			strips().filter(strip -> !strip.isRaked()).forEach(strip -> {
				marks.add(new Mark(strip.y(), Subject.strip(strip.id())));
				marks.add(new Mark(strip.top(), Subject.strip(strip.id())));
			});
		}
		return ordered(marks);
	}

	/** A base that stays counts, else the new one. */
	private Mark baseTop() {
		return wall.getTrims().stream().filter(trim -> trim.getType() == TrimType.BASE && TreatmentSketch.stays(trim))
				.filter(trim -> trim.getHeight() != null).findFirst()
				.map(trim -> new Mark(Outlines.of(trim).y1(), Subject.element(trim.getId())))
				.orElseGet(() -> new Mark(design.brief().base(), Subject.of(Subject.Kind.BASE)));
	}

	private List<Mark> openingHeights() {
		List<Mark> marks = new ArrayList<>();
		marks.add(new Mark(shape.floorRight(), Subject.of(Subject.Kind.WALL)));
		for (Opening opening : wall.getOpenings()) {
			Outline outline = Sketches.onWall(Outlines.of(opening), opening);
			marks.add(new Mark(outline.y0(), Subject.element(opening.getId())));
			marks.add(new Mark(outline.y1(), Subject.element(opening.getId())));
		}
		if (shape.isCeilingSloped() || marks.size() > 1) {
			marks.add(new Mark(shape.ceilingRight(), Subject.of(Subject.Kind.WALL)));
		}
		return ordered(marks);
	}

	private List<FrameOutline> frames() {
		return design.layout().of(wall).map(layout -> layout.frames().toList()).orElse(List.of());
	}

	private Stream<StripOutline> strips() {
		return design.layout().of(wall).stream().flatMap(WallLayout::strips);
	}

	private List<Mark> ends() {
		return List.of(new Mark(Length.ZERO, Subject.of(Subject.Kind.WALL)),
				new Mark(shape.length(), Subject.of(Subject.Kind.WALL)));
	}

	private List<Mark> ordered(List<Mark> marks) {
		return Mark.inOrder(marks, sheet.options().unit());
	}
}
