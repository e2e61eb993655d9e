// SPDX-License-Identifier: EPL-2.0
package wainscribe.profile.imported;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.Function;
import java.util.function.UnaryOperator;

import wainscribe.model.length.Length;
import wainscribe.profile.section.ArcSegment;
import wainscribe.profile.section.CurveSegment;
import wainscribe.profile.section.ProfileSection;
import wainscribe.profile.section.SectionBox;
import wainscribe.profile.section.SectionPoint;
import wainscribe.profile.section.Segment;
import wainscribe.profile.section.StraightSegment;

/**
 * The sides of a drawing that could lie on the wall, each with the way the section is laid down. In an upright drawing up stays
 * up; where the section is turned over for that it is seen from its other end.
 */
enum WallSide {

	/** Lies down already. */
	BOTTOM(SectionPoint::y, false, false, point -> point),
	/** Upright with the wall at the left. */
	LEFT(SectionPoint::x, false, true, point -> new SectionPoint(point.y(), point.x())),
	/** Upside down. */
	TOP(SectionPoint::y, true, true, point -> new SectionPoint(point.x(), point.y().negated())),
	/** Upright with the wall at the right. */
	RIGHT(SectionPoint::x, true, false, point -> new SectionPoint(point.y(), point.x().negated()));

	private final Function<SectionPoint, Length> coordinate;
	private final boolean high;
	private final boolean turnsOver;
	private final UnaryOperator<SectionPoint> laid;

	WallSide(Function<SectionPoint, Length> coordinate, boolean high, boolean turnsOver, UnaryOperator<SectionPoint> laid) {
		this.coordinate = coordinate;
		this.high = high;
		this.turnsOver = turnsOver;
		this.laid = laid;
	}

	/** Returns the section of an outline: its longest straight side becomes the back and comes to lie on the wall. */
	static ProfileSection of(List<Segment> outline) {
		SectionBox box = new ProfileSection(outline, List.of()).box();
		WallSide side = null;
		int longest = -1;
		for (WallSide candidate : values()) {
			for (int i = 0; i < outline.size(); i++) {
				if (candidate.holds(outline.get(i), box)
						&& (longest < 0 || outline.get(i).lengthMillimetres() > outline.get(longest).lengthMillimetres())) {
					side = candidate;
					longest = i;
				}
			}
		}
		if (side == null) {
			return new ProfileSection(outline, List.of()).settled();
		}
		return side.laidDown(outline, longest, box);
	}

	private boolean holds(Segment segment, SectionBox box) {
		Length edge = coordinate.apply(high ? box.high() : box.low());
		return segment instanceof StraightSegment && coordinate.apply(segment.start()).equals(edge)
				&& coordinate.apply(segment.end()).equals(edge);
	}

	/** Straight pieces that go on from the longest one along the same side belong to the back as well. */
	private ProfileSection laidDown(List<Segment> outline, int longest, SectionBox box) {
		List<Segment> ring = new ArrayList<>(outline);
		Collections.rotate(ring, -longest);
		int count = 1;
		while (count < ring.size() - 1 && holds(ring.getLast(), box)) {
			Collections.rotate(ring, 1);
			count++;
		}
		while (count < ring.size() - 1 && holds(ring.get(count), box)) {
			count++;
		}
		List<Segment> turned = ring.stream().map(this::turned).toList();
		return new ProfileSection(turned.subList(count, turned.size()), turned.subList(0, count)).settled();
	}

	private Segment turned(Segment segment) {
		SectionPoint start = laid.apply(segment.start());
		SectionPoint end = laid.apply(segment.end());
		return switch (segment) {
			case StraightSegment line -> new StraightSegment(start, end);
			case ArcSegment arc -> new ArcSegment(start, end, turnsOver ? arc.rise().negated() : arc.rise());
			case CurveSegment curve -> new CurveSegment(start, laid.apply(curve.first()), laid.apply(curve.second()), end);
		};
	}
}
