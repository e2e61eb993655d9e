// SPDX-License-Identifier: EPL-2.0
package wainscribe.profile.section;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;

import wainscribe.model.length.Length;

/**
 * What can be done to a section while it is drawn. Each step returns a new section; this one stays as it is.
 * <p>
 * Segments are counted along the outline, the face first and then the back; point n is where segment n begins. An open outline
 * has one point more, its end. Numbers outside the outline are refused with {@link IndexOutOfBoundsException}.
 *
 * @param section what is edited
 */
public record SectionEdit(ProfileSection section) {

	/** Refuses null. */
	public SectionEdit {
		Objects.requireNonNull(section);
	}

	/** Returns all points of the outline, each once. */
	public List<SectionPoint> points() {
		List<Segment> ring = section.outline();
		List<SectionPoint> points = new ArrayList<>(ring.stream().map(Segment::start).toList());
		if (!ring.isEmpty() && !isClosed(ring)) {
			points.add(ring.getLast().end());
		}
		return List.copyOf(points);
	}

	/** Moves a point; what begins or ends there follows, arcs keep their turn and curves their directions. */
	public ProfileSection movePoint(int point, SectionPoint to) {
		SectionPoint from = points().get(point);
		List<Segment> ring = new ArrayList<>(section.outline());
		if (point < ring.size()) {
			ring.set(point, ring.get(point).between(to, ring.get(point).end()));
		}
		int before = point > 0 ? point - 1 : ring.size() - 1;
		if (ring.get(before).end().equals(from)) {
			ring.set(before, ring.get(before).between(ring.get(before).start(), to));
		}
		return rebuilt(ring, section.face().size());
	}

	/** Moves a handle of a curve; refuses a segment that is none. */
	public ProfileSection moveHandle(int segment, CurveHandle handle, SectionPoint to) {
		if (!(section.outline().get(segment) instanceof CurveSegment curve)) {
			throw new IllegalArgumentException("only a curve has handles"); //$NON-NLS-1$
		}
		return replaced(segment, List.of(handle == CurveHandle.FIRST ? new CurveSegment(curve.start(), to, curve.second(), curve.end())
			: new CurveSegment(curve.start(), curve.first(), to, curve.end())));
	}

	/** Turns a segment into the arc through a point; into a straight line if the point lies in line with its ends. */
	public ProfileSection bendThrough(int segment, SectionPoint via) {
		Segment old = section.outline().get(segment);
		return replaced(segment, List.of(ArcSegment.through(old.start(), via, old.end())));
	}

	/** Turns a segment into the arc of a given rise, above 0 to the left of the way; nought makes it straight. */
	public ProfileSection turnToArc(int segment, Length rise) {
		Segment old = section.outline().get(segment);
		return replaced(segment, List.of(ArcSegment.of(old.start(), old.end(), rise.approximateMillimetres())));
	}

	/** Turns a segment into a straight line between its ends. */
	public ProfileSection turnToLine(int segment) {
		Segment old = section.outline().get(segment);
		return replaced(segment, List.of(new StraightSegment(old.start(), old.end())));
	}

	/**
	 * Turns a segment into a curve of the same course: exactly for a line, to 0.03 % of its radius for an arc, which is first
	 * cut into quarters of a circle at most.
	 */
	public ProfileSection turnToCurve(int segment) {
		return replaced(segment, CurvesAlong.of(section.outline().get(segment)));
	}

	/** Cuts a segment in two after a share of its way, above 0 and under 1. */
	public ProfileSection split(int segment, double share) {
		if (!(share > 0 && share < 1)) {
			throw new IllegalArgumentException("a segment is split between its ends"); //$NON-NLS-1$
		}
		return replaced(segment, section.outline().get(segment).split(share));
	}

	/** Inserts a point into a segment where it is nearest to the place, and moves it there. */
	public ProfileSection insertPoint(int segment, SectionPoint at) {
		double share = Math.clamp(section.outline().get(segment).nearestShare(at.spot()), 1e-3, 1 - 1e-3);
		return new SectionEdit(split(segment, share)).movePoint(segment + 1, at);
	}

	/**
	 * Deletes a point. Its two segments become one: straight between lines, else a curve that leaves and ends as they did. At
	 * the end of an open outline its segment goes.
	 */
	public ProfileSection deletePoint(int point) {
		List<Segment> ring = new ArrayList<>(section.outline());
		SectionPoint gone = points().get(point);
		int after = point % ring.size();
		int before = (point + ring.size() - 1) % ring.size();
		if (!ring.get(before).end().equals(gone) || point == ring.size()) {
			ring.remove(point == ring.size() ? before : after);
			return rebuilt(ring, Math.min(section.face().size(), ring.size()));
		}
		int face = section.face().size();
		ring.set(before, joined(ring.get(before), ring.get(after)));
		ring.remove(after);
		boolean faceShrinks = after < face;
		return rebuilt(ring, faceShrinks ? Math.max(1, face - 1) : face);
	}

	private static Segment joined(Segment one, Segment other) {
		if (one instanceof StraightSegment && other instanceof StraightSegment) {
			return new StraightSegment(one.start(), other.end());
		}
		CurveSegment leaves = CurvesAlong.of(one).getFirst();
		CurveSegment ends = CurvesAlong.of(other).getLast();
		return new CurveSegment(leaves.start(), leaves.first(), ends.second(), ends.end());
	}

	/** Draws a segment on, from the end of an open outline without a back; refuses any other. */
	public ProfileSection append(Segment segment) {
		List<Segment> ring = section.outline();
		if (!ring.isEmpty() && isClosed(ring) || !section.back().isEmpty()) {
			throw new IllegalArgumentException("the outline is closed"); //$NON-NLS-1$
		}
		List<Segment> face = new ArrayList<>(section.face());
		face.add(segment);
		return new ProfileSection(face, List.of());
	}

	/** Closes an open outline with a straight back from its end to its start; a closed one stays. */
	public ProfileSection close() {
		List<Segment> ring = section.outline();
		if (ring.isEmpty() || isClosed(ring)) {
			return section;
		}
		List<Segment> back = new ArrayList<>(section.back());
		back.add(new StraightSegment(ring.getLast().end(), ring.getFirst().start()));
		return new ProfileSection(section.face(), back);
	}

	/** Makes a stretch of a closed outline the back and all else the face; the stretch may pass the outline's first point. */
	public ProfileSection withBack(int first, int count) {
		List<Segment> ring = new ArrayList<>(section.outline());
		Objects.checkIndex(first, ring.size());
		if (count < 0 || count >= ring.size()) {
			throw new IllegalArgumentException("face and back need a segment each"); //$NON-NLS-1$
		}
		int face = ring.size() - count;
		Collections.rotate(ring, -(first + count) % ring.size());
		return rebuilt(ring, face);
	}

	/** Turns the section upside down. */
	public ProfileSection mirrored() {
		return section.mirrored();
	}

	private ProfileSection replaced(int segment, List<? extends Segment> by) {
		List<Segment> ring = new ArrayList<>(section.outline());
		ring.remove(segment);
		ring.addAll(segment, by);
		int face = section.face().size();
		return rebuilt(ring, segment < face ? face + by.size() - 1 : face);
	}

	private static ProfileSection rebuilt(List<Segment> ring, int face) {
		return new ProfileSection(ring.subList(0, face), ring.subList(face, ring.size()));
	}

	private static boolean isClosed(List<Segment> ring) {
		return ring.size() > 1 && ring.getLast().end().equals(ring.getFirst().start());
	}
}
