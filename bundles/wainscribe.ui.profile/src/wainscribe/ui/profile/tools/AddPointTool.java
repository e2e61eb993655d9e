// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile.tools;

import java.util.List;

import org.eclipse.gef.GraphicalViewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.KeyEvent;

import wainscribe.profile.section.ProfileSection;
import wainscribe.profile.section.SectionEdit;
import wainscribe.profile.section.SectionPoint;
import wainscribe.profile.section.Segment;
import wainscribe.profile.section.StraightSegment;
import wainscribe.ui.profile.Messages;
import wainscribe.ui.profile.actions.SectionSteps;
import wainscribe.ui.profile.desk.ProfileDesk;
import wainscribe.ui.profile.desk.SectionNodes;
import wainscribe.ui.profile.feedback.MoveFeedback;
import wainscribe.ui.profile.snapping.NodeSnap;
import wainscribe.ui.profile.snapping.PointSnap;
import wainscribe.ui.profile.words.NodeWords;

/**
 * Draws by clicks: on from the end of an open outline, to a click on its first point or Enter, which closes it with the back;
 * in a closed outline a click puts a point into the nearest segment. Backspace takes the last line away, Escape ends.
 */
public final class AddPointTool extends DeskTool {

	/** A point goes into a segment that is so many pixels away. */
	private static final double REACH = 14;

	private final SectionSteps steps;
	private final MoveFeedback feedback;
	private SectionPoint first;

	/** Creates the tool of a desk. */
	public AddPointTool(GraphicalViewer viewer, ProfileDesk desk, SectionSteps steps) {
		super(viewer, desk);
		this.steps = steps;
		feedback = new MoveFeedback(desk, feedbackLayer());
	}

	@Override
	protected boolean handleButtonUp(int button) {
		if (button != 1) {
			return true;
		}
		if (steps.isClosed()) {
			insert();
		} else {
			drawTo(snapped().point());
		}
		return true;
	}

	@Override
	protected boolean handleMove() {
		PointSnap.Result snapped = snapped();
		SectionPoint from = from();
		feedback.show(snapped, from == null ? List.of(NodeWords.place(snapped.point(), desk().session().units()))
				: NodeWords.moving(snapped.point(), from, desk().session().units()));
		if (from != null && !from.equals(snapped.point())) {
			desk().session().tryOut(drawnOn(from, snapped.point()));
		}
		return true;
	}

	@Override
	protected boolean handleKeyDown(KeyEvent event) {
		if (event.keyCode == SWT.CR || event.keyCode == SWT.KEYPAD_CR) {
			desk().session().endTrial();
			if (steps.canClose()) {
				steps.close();
				getDomain().loadDefaultTool();
			}
			return true;
		}
		if (event.keyCode == SWT.BS) {
			desk().session().endTrial();
			removeLast();
			return true;
		}
		return super.handleKeyDown(event);
	}

	@Override
	public void deactivate() {
		feedback.erase();
		desk().session().endTrial();
		super.deactivate();
	}

	private void drawTo(SectionPoint to) {
		desk().session().endTrial();
		SectionPoint from = from();
		if (from == null) {
			first = to;
			return;
		}
		if (from.equals(to)) {
			return;
		}
		List<Segment> drawn = draft().face();
		if (drawn.size() > 1 && to.equals(drawn.getFirst().start())) {
			steps.close();
			getDomain().loadDefaultTool();
		} else {
			steps.draw(Messages.AddPointTool_Line, drawnOn(from, to));
			first = null;
		}
	}

	private void insert() {
		SectionPoint at = snapped().point();
		int nearest = -1;
		double least = REACH / desk().plane().scale();
		List<Segment> ring = draft().outline();
		for (int i = 0; i < ring.size(); i++) {
			double distance = ring.get(i).at(ring.get(i).nearestShare(pointed().spot())).distanceTo(pointed().spot());
			if (distance < least) {
				nearest = i;
				least = distance;
			}
		}
		if (nearest >= 0) {
			steps.draw(Messages.AddPointTool_Point, new SectionEdit(draft()).insertPoint(nearest, at));
		}
	}

	private void removeLast() {
		int count = draft().outline().size();
		if (count > 1 && !steps.isClosed()) {
			steps.draw(Messages.AddPointTool_TakeBack, new SectionEdit(draft()).deletePoint(count));
		} else if (count == 1) {
			first = draft().outline().getFirst().start();
			steps.clear();
		}
	}

	private ProfileSection drawnOn(SectionPoint from, SectionPoint to) {
		return new SectionEdit(draft()).append(new StraightSegment(from, to));
	}

	/** Where the next line begins; null if nothing is drawn yet, or all is. */
	private SectionPoint from() {
		if (steps.isClosed()) {
			return null;
		}
		return draft().outline().isEmpty() ? first : draft().outline().getLast().end();
	}

	private ProfileSection draft() {
		return desk().session().draft().section();
	}

	private PointSnap.Result snapped() {
		return NodeSnap.ofNew(desk(), new SectionNodes(draft()), from(), isFree()).snap(pointed());
	}
}
