// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.gaps;

import java.util.Objects;
import java.util.Optional;

import org.eclipse.draw2d.Cursors;
import org.eclipse.draw2d.IFigure;
import org.eclipse.draw2d.geometry.Dimension;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.gef.EditPart;
import org.eclipse.gef.LayerConstants;
import org.eclipse.gef.editparts.LayerManager;
import org.eclipse.gef.tools.SelectEditPartTracker;

import wainscribe.model.length.Length;
import wainscribe.ui.drafting.history.ModelCommand;
import wainscribe.ui.elevation.feedback.DragFeedback;
import wainscribe.ui.elevation.feedback.Proposal;
import wainscribe.ui.elevation.table.DrawingTable;
import wainscribe.ui.elevation.table.Projection;
import wainscribe.ui.elevation.words.DragNotes;

/** Drags a gap: the frame's edge follows the pointer from tape mark to tape mark, and all gaps of the room follow it. */
public final class GapTracker extends SelectEditPartTracker {

	private final DrawingTable table;
	private final GapSpot spot;
	private final GapChange change;
	private final Length start;
	private DragFeedback feedback;

	/**
	 * Creates a tracker.
	 *
	 * @param owner what a click without a drag selects
	 * @param table the drawing table
	 * @param spot  the gap taken hold of
	 */
	public GapTracker(EditPart owner, DrawingTable table, GapSpot spot) {
		super(owner);
		this.table = Objects.requireNonNull(table);
		this.spot = Objects.requireNonNull(spot);
		change = new GapChange(table, spot.upright());
		start = change.now();
		setDefaultCursor(spot.upright() ? Cursors.SIZENS : Cursors.SIZEWE);
		setDisabledCursor(getDefaultCursor());
	}

	@Override
	protected boolean handleDragStarted() {
		return stateTransition(STATE_DRAG, STATE_DRAG_IN_PROGRESS);
	}

	@Override
	protected boolean handleDragInProgress() {
		if (isInState(STATE_DRAG_IN_PROGRESS)) {
			Proposal proposal = proposal();
			if (feedback == null) {
				feedback = new DragFeedback(table, layer(), true);
			}
			feedback.show(Optional.of(proposal), getLocation());
			setCurrentCommand(new ModelCommand(proposal.command()));
		}
		return true;
	}

	@Override
	protected boolean handleButtonUp(int button) {
		if (stateTransition(STATE_DRAG_IN_PROGRESS, STATE_TERMINAL)) {
			setCurrentCommand(new ModelCommand(proposal().command()));
			erase();
			executeCurrentCommand();
			return true;
		}
		return super.handleButtonUp(button);
	}

	@Override
	public void deactivate() {
		erase();
		super.deactivate();
	}

	private void erase() {
		if (feedback != null) {
			feedback.erase();
			feedback = null;
		}
	}

	private Proposal proposal() {
		Projection place = table.placeOf(spot.wall());
		Dimension moved = getDragMoveDelta();
		Length by = spot.upright() ? place.length(-moved.height) : place.length(moved.width);
		boolean high = spot.followsHigh(spot.upright() ? place.yAt(grabbed().y) : place.xAt(grabbed().x));
		Length gap = change.onTape(high ? start.plus(by) : start.minus(by));
		return new Proposal(change.to(gap), spot.wall(), spot.edge(gap, high), null, null,
				design -> DragNotes.gap(design, spot, gap, table.units()));
	}

	private Point grabbed() {
		Point point = getStartLocation().getCopy();
		layer().translateToRelative(point);
		return point;
	}

	private IFigure layer() {
		return LayerManager.Helper.find(getSourceEditPart()).getLayer(LayerConstants.FEEDBACK_LAYER);
	}
}
