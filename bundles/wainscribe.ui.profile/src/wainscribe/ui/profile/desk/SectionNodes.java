// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile.desk;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

import wainscribe.model.length.Length;
import wainscribe.profile.section.ArcSegment;
import wainscribe.profile.section.CurveHandle;
import wainscribe.profile.section.CurveSegment;
import wainscribe.profile.section.ProfileSection;
import wainscribe.profile.section.SectionEdit;
import wainscribe.profile.section.SectionPoint;
import wainscribe.profile.section.Segment;
import wainscribe.profile.section.Spot;

/**
 * Points, segments and handles of a section: which there are, where they are, and what moving some of them does.
 *
 * @param section the section
 */
public record SectionNodes(ProfileSection section) {

	/** Refuses null. */
	public SectionNodes {
		Objects.requireNonNull(section);
	}

	/** Returns everything that can be taken hold of: segments, then handles, then points, which lie on top. */
	public List<NodeKey> all() {
		List<NodeKey> all = new ArrayList<>();
		List<Segment> ring = section.outline();
		for (int i = 0; i < ring.size(); i++) {
			all.add(new NodeKey.OfSegment(i));
		}
		for (int i = 0; i < ring.size(); i++) {
			if (ring.get(i) instanceof CurveSegment) {
				all.add(new NodeKey.OfHandle(i, Grip.LEAVES));
				all.add(new NodeKey.OfHandle(i, Grip.ARRIVES));
			} else if (ring.get(i) instanceof ArcSegment) {
				all.add(new NodeKey.OfHandle(i, Grip.MIDDLE));
			}
		}
		for (int i = 0; i < points().size(); i++) {
			all.add(new NodeKey.OfPoint(i));
		}
		return all;
	}

	/** Returns the points of the outline, each once. */
	public List<SectionPoint> points() {
		return new SectionEdit(section).points();
	}

	/** Returns a segment; empty if there is none of that number. */
	public Optional<Segment> segment(int number) {
		List<Segment> ring = section.outline();
		return number >= 0 && number < ring.size() ? Optional.of(ring.get(number)) : Optional.empty();
	}

	/** Returns where something is, a segment where it begins; empty if it is not there. */
	public Optional<SectionPoint> placeOf(NodeKey key) {
		return switch (key) {
			case NodeKey.OfPoint(int point) -> point < points().size() ? Optional.of(points().get(point)) : Optional.empty();
			case NodeKey.OfSegment(int segment) -> segment(segment).map(Segment::start);
			case NodeKey.OfHandle(int segment, Grip grip) -> segment(segment).flatMap(found -> handle(found, grip));
		};
	}

	/** Returns the numbers of the points at which a segment begins and ends. */
	public List<Integer> endsOf(int segment) {
		return List.of(segment, (segment + 1) % points().size());
	}

	/** Tells whether a segment belongs to the back. */
	public boolean isBack(int segment) {
		return segment >= section.face().size();
	}

	/** Returns the points that go along when some nodes are moved. */
	public Set<Integer> movedPoints(Collection<? extends NodeKey> nodes) {
		Set<Integer> moved = new TreeSet<>();
		for (NodeKey node : nodes) {
			if (node instanceof NodeKey.OfPoint(int point)) {
				moved.add(point);
			} else if (node instanceof NodeKey.OfSegment(int segment)) {
				moved.addAll(endsOf(segment));
			}
		}
		return moved;
	}

	/**
	 * Moves some nodes together; a handle whose segment goes along anyway is not moved twice.
	 *
	 * @param nodes what is moved
	 * @param up    up the wall
	 * @param out   out from the wall
	 */
	public ProfileSection moved(Collection<? extends NodeKey> nodes, Length up, Length out) {
		Set<Integer> moved = movedPoints(nodes);
		ProfileSection result = section;
		for (int point : moved) {
			result = new SectionEdit(result).movePoint(point, points().get(point).moved(up, out));
		}
		for (NodeKey node : nodes) {
			if (node instanceof NodeKey.OfHandle handle && endsOf(handle.segment()).stream().noneMatch(moved::contains)) {
				SectionPoint to = placeOf(handle).orElseThrow().moved(up, out);
				result = new SectionNodes(result).withHandle(handle, to);
			}
		}
		return result;
	}

	/** Puts one node at a place. */
	public ProfileSection placed(NodeKey node, SectionPoint to) {
		SectionPoint from = placeOf(node).orElseThrow();
		return moved(List.of(node), to.x().minus(from.x()), to.y().minus(from.y()));
	}

	private ProfileSection withHandle(NodeKey.OfHandle handle, SectionPoint to) {
		SectionEdit edit = new SectionEdit(section);
		return switch (handle.grip()) {
			case LEAVES -> edit.moveHandle(handle.segment(), CurveHandle.FIRST, to);
			case ARRIVES -> edit.moveHandle(handle.segment(), CurveHandle.SECOND, to);
			case MIDDLE -> bent(edit, handle.segment(), to);
		};
	}

	/** The middle of an arc moves square to its chord: its height over the chord is its rise. */
	private static ProfileSection bent(SectionEdit edit, int segment, SectionPoint to) {
		Segment arc = edit.section().outline().get(segment);
		double dx = arc.end().spot().x() - arc.start().spot().x();
		double dy = arc.end().spot().y() - arc.start().spot().y();
		double rise = (dx * (to.spot().y() - arc.start().spot().y()) - dy * (to.spot().x() - arc.start().spot().x()))
				/ Math.hypot(dx, dy);
		Length exact = Spot.nearest(rise);
		return exact.signum() == 0 ? edit.section() : edit.turnToArc(segment, exact);
	}

	private static Optional<SectionPoint> handle(Segment segment, Grip grip) {
		return switch (segment) {
			case CurveSegment curve when grip == Grip.LEAVES -> Optional.of(curve.first());
			case CurveSegment curve when grip == Grip.ARRIVES -> Optional.of(curve.second());
			case ArcSegment arc when grip == Grip.MIDDLE -> Optional.of(arc.at(0.5).nearest());
			default -> Optional.empty();
		};
	}
}
