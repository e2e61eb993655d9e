// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile.snapping;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;

import wainscribe.profile.section.SectionPoint;
import wainscribe.ui.profile.desk.Grip;
import wainscribe.ui.profile.desk.NodeKey;
import wainscribe.ui.profile.desk.ProfileDesk;
import wainscribe.ui.profile.desk.SectionNodes;

/** Knows what draws a node of a section when it is moved. */
public final class NodeSnap {

	/** Lines draw from this many pixels away. */
	private static final double REACH = 7;

	private NodeSnap() {
	}

	/**
	 * Collects what draws a node.
	 *
	 * @param desk  scale and marks
	 * @param nodes the section before
	 * @param held  what is held
	 * @param moved everything that goes along, the held node too
	 * @param free  true to be drawn to marks only
	 */
	public static PointSnap of(ProfileDesk desk, SectionNodes nodes, NodeKey held, Collection<NodeKey> moved, boolean free) {
		boolean middle = held instanceof NodeKey.OfHandle(int segment, Grip grip) && grip == Grip.MIDDLE;
		if (free || middle) {
			return PointSnap.toMarks(desk.mark());
		}
		Set<Integer> going = nodes.movedPoints(moved);
		List<SectionPoint> points = nodes.points();
		List<SectionPoint> staying = new ArrayList<>();
		for (int i = 0; i < points.size(); i++) {
			if (!going.contains(i)) {
				staying.add(points.get(i));
			}
		}
		List<SectionPoint> neighbours = neighbours(nodes, held).stream().filter(point -> !going.contains(point)).map(points::get).toList();
		PointSnap snap = PointSnap.around(staying, neighbours, REACH / desk.plane().scale(), desk.mark());
		// closing is the only reason to put a point onto another
		return new PointSnap(closing(nodes, held), snap.lines(), snap.reach(), snap.mark());
	}

	/**
	 * Collects what draws a point that is not there yet.
	 *
	 * @param nodes what is drawn
	 * @param from  the point it will be joined to; null for none
	 */
	public static PointSnap ofNew(ProfileDesk desk, SectionNodes nodes, SectionPoint from, boolean free) {
		if (free) {
			return PointSnap.toMarks(desk.mark());
		}
		PointSnap snap = PointSnap.around(nodes.points(), from == null ? List.of() : List.of(from), REACH / desk.plane().scale(),
				desk.mark());
		List<SectionPoint> onto = nodes.points().isEmpty() ? List.of() : List.of(nodes.points().getFirst());
		return new PointSnap(onto, snap.lines(), snap.reach(), snap.mark());
	}

	private static List<Integer> neighbours(SectionNodes nodes, NodeKey held) {
		int count = nodes.points().size();
		return switch (held) {
			case NodeKey.OfPoint(int point) -> List.of((point + count - 1) % count, (point + 1) % count);
			case NodeKey.OfSegment(int segment) -> List.of((segment + count - 1) % count);
			case NodeKey.OfHandle(int segment, Grip grip) -> List.of(nodes.endsOf(segment).get(grip == Grip.LEAVES ? 0 : 1));
		};
	}

	private static List<SectionPoint> closing(SectionNodes nodes, NodeKey held) {
		List<SectionPoint> points = nodes.points();
		boolean open = points.size() > nodes.section().outline().size() && points.size() > 2;
		if (open && held instanceof NodeKey.OfPoint(int point)) {
			if (point == 0) {
				return List.of(points.getLast());
			}
			if (point == points.size() - 1) {
				return List.of(points.getFirst());
			}
		}
		return List.of();
	}
}
