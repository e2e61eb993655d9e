// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.policies;

import java.util.List;
import java.util.Optional;

import org.eclipse.draw2d.FigureListener;
import org.eclipse.draw2d.IFigure;
import org.eclipse.gef.EditPart;
import org.eclipse.gef.GraphicalEditPart;
import org.eclipse.gef.LayerConstants;
import org.eclipse.gef.Request;
import org.eclipse.gef.commands.Command;
import org.eclipse.gef.commands.UnexecutableCommand;
import org.eclipse.gef.editpolicies.ResizableEditPolicy;
import org.eclipse.gef.requests.ChangeBoundsRequest;

import wainscribe.model.outline.Outline;
import wainscribe.ui.elevation.editparts.ThingEditPart;
import wainscribe.ui.elevation.feedback.DragFeedback;
import wainscribe.ui.elevation.feedback.Proposal;
import wainscribe.ui.elevation.figures.TableHandles;
import wainscribe.ui.drafting.history.ModelCommand;
import wainscribe.ui.elevation.snapping.EdgeShift;
import wainscribe.ui.elevation.snapping.Pull;
import wainscribe.ui.elevation.snapping.SnapLines;
import wainscribe.ui.elevation.snapping.Snapper;
import wainscribe.ui.elevation.snapping.TableLines;
import wainscribe.ui.elevation.table.DrawingTable;

/**
 * Turns drags and nudges of a thing into a proposal, shows what the room would become of it, and hands over its command.
 * What a drag means, subclasses say.
 */
public abstract class LiveDragEditPolicy extends ResizableEditPolicy {

	/** Lines draw from this many pixels away. */
	private static final int REACH = 7;

	private final FigureListener size = figure -> followSize();
	private DragFeedback feedback;
	private int gripsFor = -1;

	/**
	 * Says what shifting the edges of the host would mean.
	 *
	 * @param shift as the pointer or the arrow keys say
	 * @param pull  what draws the edges
	 * @return what would be done; empty when the thing can't be shifted like this
	 */
	protected abstract Optional<Proposal> propose(EdgeShift shift, Pull pull);

	/** Returns what gives no lines to be drawn to, because it is what moves. */
	protected abstract Object moved();

	/** Returns the part of the thing. */
	protected final ThingEditPart thing() {
		return (ThingEditPart) getHost();
	}

	/** Returns the drawing table. */
	protected final DrawingTable table() {
		return thing().table();
	}

	/** Draws the shifted edges to what is near. */
	protected final Snapper.Result snapped(Outline outline, EdgeShift shift, Pull pull) {
		if (pull == Pull.NONE) {
			return new Snapper.Result(shift, null, null);
		}
		SnapLines lines = pull == Pull.LINES ? TableLines.of(table(), thing().wall(), moved())
				: new SnapLines(List.of(), List.of());
		return new Snapper(lines, table().placeOf(thing().wall()).length(REACH), table().units().tapeMark()).snap(outline, shift);
	}

	@Override
	public boolean understandsRequest(Request request) {
		return NudgeRequest.TYPE.equals(request.getType()) || super.understandsRequest(request);
	}

	@Override
	public Command getCommand(Request request) {
		if (request instanceof NudgeRequest nudge) {
			return command(propose(EdgeShift.moving(nudge.dx(), nudge.dy()), Pull.NONE));
		}
		return super.getCommand(request);
	}

	@Override
	protected Command getMoveCommand(ChangeBoundsRequest request) {
		return command(proposed(request));
	}

	@Override
	protected Command getResizeCommand(ChangeBoundsRequest request) {
		return command(proposed(request));
	}

	/** Things are not carried from wall to wall. */
	@Override
	protected Command getOrphanCommand(Request request) {
		return UnexecutableCommand.INSTANCE;
	}

	private Optional<Proposal> proposed(ChangeBoundsRequest request) {
		return propose(DragRequests.shift(request, table().placeOf(thing().wall())), DragRequests.pull(request));
	}

	private static Command command(Optional<Proposal> proposal) {
		return proposal.<Command>map(made -> new ModelCommand(made.command())).orElse(UnexecutableCommand.INSTANCE);
	}

	@Override
	protected void showChangeBoundsFeedback(ChangeBoundsRequest request) {
		if (feedback == null) {
			feedback = new DragFeedback(table(), getLayer(LayerConstants.FEEDBACK_LAYER),
					getHost().getSelected() != EditPart.SELECTED);
		}
		feedback.show(proposed(request), request.getLocation());
	}

	@Override
	protected void eraseChangeBoundsFeedback(ChangeBoundsRequest request) {
		if (feedback != null) {
			feedback.erase();
			feedback = null;
		}
	}

	@Override
	public void activate() {
		super.activate();
		getHostFigure().addFigureListener(size);
	}

	@Override
	public void deactivate() {
		getHostFigure().removeFigureListener(size);
		super.deactivate();
	}

	/** What has become too small for grips loses them, and the other way round. */
	private void followSize() {
		boolean selected = !handles().isEmpty();
		if (selected && gripsFor != TableHandles.gripsFor(getHostFigure().getBounds(), getResizeDirections())) {
			removeSelectionHandles();
			addSelectionHandles();
		}
	}

	private List<?> handles() {
		return handles == null ? List.of() : handles;
	}

	@Override
	protected List<IFigure> createSelectionHandles() {
		gripsFor = TableHandles.gripsFor(getHostFigure().getBounds(), getResizeDirections());
		return TableHandles.of((GraphicalEditPart) getHost(), table().colours(), getResizeDirections());
	}

	/** What has the keyboard's attention is what is selected first: no further mark. */
	@Override
	protected void showFocus() {
		// see above
	}
}
