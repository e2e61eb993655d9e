// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile.actions;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.BiFunction;

import org.eclipse.gef.EditPart;
import org.eclipse.gef.GraphicalViewer;

import wainscribe.model.length.Length;
import wainscribe.profile.section.ArcSegment;
import wainscribe.profile.section.CurveSegment;
import wainscribe.profile.section.ProfileSection;
import wainscribe.profile.section.SectionEdit;
import wainscribe.profile.section.SectionPoint;
import wainscribe.profile.section.Segment;
import wainscribe.profile.section.Spot;
import wainscribe.profile.section.StraightSegment;
import wainscribe.ui.profile.Messages;
import wainscribe.ui.profile.desk.NodeKey;
import wainscribe.ui.profile.desk.ProfileDesk;
import wainscribe.ui.profile.desk.SectionNodes;
import wainscribe.ui.profile.session.ProfileSession;

/** What can be done with the selected nodes and the whole section. Each is one step of the history; none does nothing quietly. */
public final class SectionSteps {

	/** A new arc rises by this share of its chord: flat, and easily drawn further. */
	private static final double FIRST_RISE = 0.2;
	private static final double MIDDLE = 0.5;

	private final GraphicalViewer viewer;
	private final ProfileSession session;

	/** Creates the steps of a viewer. */
	public SectionSteps(GraphicalViewer viewer, ProfileDesk desk) {
		this.viewer = Objects.requireNonNull(viewer);
		session = desk.session();
	}

	/** Returns what is selected. */
	public List<NodeKey> selected() {
		List<NodeKey> keys = new ArrayList<>();
		for (Object part : viewer.getSelectedEditParts()) {
			if (((EditPart) part).getModel() instanceof NodeKey key) {
				keys.add(key);
			}
		}
		return keys;
	}

	/** Returns the numbers of the selected segments in their order. */
	public List<Integer> segments() {
		return selected().stream().filter(NodeKey.OfSegment.class::isInstance).map(key -> ((NodeKey.OfSegment) key).segment())
				.sorted().toList();
	}

	/** Returns the numbers of the selected points in their order. */
	public List<Integer> points() {
		return selected().stream().filter(NodeKey.OfPoint.class::isInstance).map(key -> ((NodeKey.OfPoint) key).point()).sorted()
				.toList();
	}

	/** Tells whether a selected segment is not yet of a kind. */
	public boolean canTurnTo(Class<? extends Segment> kind) {
		List<Segment> ring = section().outline();
		return segments().stream().anyMatch(number -> !kind.isInstance(ring.get(number)));
	}

	/** Makes the selected segments straight. */
	public void turnToLines() {
		turn(Messages.SectionSteps_Line, StraightSegment.class, SectionEdit::turnToLine);
	}

	/** Makes the selected segments arcs; what is bent already keeps its height over the chord. */
	public void turnToArcs() {
		turn(Messages.SectionSteps_Arc, ArcSegment.class, (edit, number) -> {
			Segment segment = edit.section().outline().get(number);
			if (segment instanceof StraightSegment) {
				return edit.turnToArc(number, outwards(segment));
			}
			return edit.bendThrough(number, segment.at(MIDDLE).nearest());
		});
	}

	/** Makes the selected segments curves of the same course. */
	public void turnToCurves() {
		turn(Messages.SectionSteps_Curve, CurveSegment.class, SectionEdit::turnToCurve);
	}

	/** Puts a new point into the middle of the selected segments, or of those that begin at selected points, and selects it. */
	public void insertPoint() {
		List<Integer> into = segments().isEmpty() ? points() : segments();
		into.stream().filter(number -> number < section().outline().size()).findFirst().ifPresent(number -> {
			draw(Messages.SectionSteps_Insert, new SectionEdit(section()).split(number, MIDDLE));
			select(new NodeKey.OfPoint(number + 1));
		});
	}

	/** Tells whether something selected can be deleted. */
	public boolean canDelete() {
		return !points().isEmpty() || !segments().isEmpty();
	}

	/** Deletes the selected points, or the points where selected segments begin. */
	public void delete() {
		List<Integer> gone = points().isEmpty() ? segments() : points();
		ProfileSection result = section();
		for (int point : gone.reversed()) {
			if (!result.outline().isEmpty()) {
				result = new SectionEdit(result).deletePoint(point);
			}
		}
		if (!gone.isEmpty()) {
			viewer.deselectAll();
			draw(gone.size() == 1 ? Messages.SectionSteps_Delete : Messages.SectionSteps_DeleteMany, result);
			int left = new SectionNodes(result).points().size();
			if (left > 0) {
				select(new NodeKey.OfPoint(Math.clamp(gone.getFirst() - 1L, 0, left - 1)));
			}
		}
	}

	/** Moves what is selected by an exact length; tells whether anything was. */
	public boolean nudge(Length up, Length out) {
		List<NodeKey> keys = selected();
		if (!keys.isEmpty()) {
			draw(keys.size() == 1 ? Messages.SectionSteps_Nudge : Messages.SectionSteps_NudgeMany,
					new SectionNodes(section()).moved(keys, up, out));
		}
		return !keys.isEmpty();
	}

	/** Puts one node at a place. */
	public void place(NodeKey node, SectionPoint to) {
		draw(Messages.SectionSteps_Place, new SectionNodes(section()).placed(node, to));
	}

	/** Turns the section upside down. */
	public void mirror() {
		viewer.deselectAll();
		draw(Messages.SectionSteps_Mirror, section().mirrored());
	}

	/** Tells whether the selected segments can lie against the wall: all of a closed outline but some, one after another. */
	public boolean canBeBack() {
		List<Integer> chosen = segments();
		int count = section().outline().size();
		return !chosen.isEmpty() && chosen.size() < count && isClosed() && firstOfRun(chosen, count) >= 0;
	}

	/** Makes the selected segments the back and all others the face. */
	public void makeBack() {
		List<Integer> chosen = segments();
		int first = firstOfRun(chosen, section().outline().size());
		viewer.deselectAll();
		draw(Messages.SectionSteps_Back, new SectionEdit(section()).withBack(first, chosen.size()));
	}

	/** Tells whether the outline ends where it begins. */
	public boolean isClosed() {
		List<Segment> ring = section().outline();
		return ring.size() > 1 && ring.getLast().end().equals(ring.getFirst().start());
	}

	/** Tells whether an open outline can be closed. */
	public boolean canClose() {
		return section().outline().size() > 1 && !isClosed();
	}

	/** Closes an open outline with the back. */
	public void close() {
		draw(Messages.SectionSteps_Close, new SectionEdit(section()).close());
	}

	/** Takes the whole section off the desk, to be drawn anew. */
	public void clear() {
		viewer.deselectAll();
		draw(Messages.SectionSteps_Clear, ProfileSection.EMPTY);
	}

	/** Selects one node and shows it. */
	public void select(NodeKey key) {
		viewer.flush();
		if (viewer.getEditPartRegistry().get(key) instanceof EditPart part) {
			viewer.select(part);
			viewer.reveal(part);
		}
	}

	/** Draws another section as one step. */
	public void draw(String label, ProfileSection other) {
		session.execute(session.drawing(label, other));
	}

	private ProfileSection section() {
		return session.draft().section();
	}

	private void turn(String label, Class<? extends Segment> kind, BiFunction<SectionEdit, Integer, ProfileSection> step) {
		ProfileSection result = section();
		for (int number : segments().reversed()) {
			if (!kind.isInstance(result.outline().get(number))) {
				result = step.apply(new SectionEdit(result), number);
			}
		}
		draw(label, result);
	}

	/** The face of a settled section runs up the wall with the solid at its right, so left of the way is out of the moulding. */
	private static Length outwards(Segment segment) {
		Length rise = Spot.nearest(segment.start().spot().distanceTo(segment.end().spot()) * FIRST_RISE);
		return rise.signum() == 0 ? new Length(1) : rise;
	}

	/** Returns the first of segments that follow one another round the outline; below 0 if they do not. */
	private static int firstOfRun(List<Integer> chosen, int count) {
		for (int first : chosen) {
			boolean run = true;
			for (int i = 0; i < chosen.size(); i++) {
				run &= chosen.contains((first + i) % count);
			}
			if (run) {
				return first;
			}
		}
		return -1;
	}
}
