// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile.editparts;

import java.util.ArrayList;
import java.util.List;

import wainscribe.drawing.Point;
import wainscribe.profile.section.ProfileSection;
import wainscribe.profile.section.Segment;
import wainscribe.profile.section.Spot;
import wainscribe.ui.drafting.rulers.RulerMarks;
import wainscribe.ui.profile.desk.Plane;
import wainscribe.ui.profile.desk.ProfileDesk;
import wainscribe.ui.profile.figures.DeskPicture;

/** Turns what is on a desk into pixels. */
final class DeskView {

	/** Chords are never seen as such. */
	private static final double PIXELS = 0.15;

	private final Plane plane;

	private DeskView(Plane plane) {
		this.plane = plane;
	}

	static DeskPicture of(ProfileDesk desk) {
		DeskView view = new DeskView(desk.plane());
		ProfileSection section = desk.session().shown();
		RulerMarks marks = desk.marks();
		return new DeskPicture(view.outline(desk.session().sound()), view.courses(section.face()), view.courses(section.back()),
				view.gap(section), marks.fine().approximateMillimetres() * desk.plane().scale(),
				marks.numbered().approximateMillimetres() * desk.plane().scale());
	}

	/** Returns the chords along a segment, its ends among them. */
	List<Point> course(Segment segment) {
		List<Point> course = new ArrayList<>();
		course.add(point(segment.start().spot()));
		segment.chords(PIXELS / plane.scale()).forEach(spot -> course.add(point(spot)));
		return course;
	}

	static List<Point> course(ProfileDesk desk, Segment segment) {
		return new DeskView(desk.plane()).course(segment);
	}

	private List<List<Point>> courses(List<Segment> segments) {
		return segments.stream().map(this::course).toList();
	}

	private List<Point> outline(ProfileSection section) {
		return section.outline().stream().flatMap(segment -> course(segment).stream()).toList();
	}

	private List<Point> gap(ProfileSection section) {
		List<Segment> ring = section.outline();
		if (ring.isEmpty() || ring.getLast().end().equals(ring.getFirst().start())) {
			return List.of();
		}
		return List.of(point(ring.getLast().end().spot()), point(ring.getFirst().start().spot()));
	}

	private Point point(Spot spot) {
		return new Point(plane.column(spot.y()), plane.row(spot.x()));
	}
}
