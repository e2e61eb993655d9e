// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.speed;

import java.util.List;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.draw2d.ColorConstants;
import org.eclipse.draw2d.FreeformLayer;
import org.eclipse.draw2d.FreeformLayout;
import org.eclipse.draw2d.IFigure;
import org.eclipse.draw2d.RectangleFigure;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.gef.DefaultEditDomain;
import org.eclipse.gef.EditPart;
import org.eclipse.gef.EditPolicy;
import org.eclipse.gef.GraphicalViewer;
import org.eclipse.gef.Request;
import org.eclipse.gef.RequestConstants;
import org.eclipse.gef.commands.Command;
import org.eclipse.gef.editparts.AbstractGraphicalEditPart;
import org.eclipse.gef.editparts.FreeformGraphicalRootEditPart;
import org.eclipse.gef.editpolicies.AbstractEditPolicy;
import org.eclipse.gef.editpolicies.ResizableEditPolicy;
import org.eclipse.gef.ui.parts.GraphicalEditor;

/** The least that is an editor: a viewer with one rectangle that can be dragged. What the drawing table is compared with. */
public final class BareEditor extends GraphicalEditor {

	/** Id of the editor. */
	public static final String ID = "wainscribe.ui.tests.bareEditor";

	private static final String SHEET = "sheet";
	private static final String RECTANGLE = "rectangle";

	/** Creates the editor. */
	public BareEditor() {
		setEditDomain(new DefaultEditDomain(this));
	}

	@Override
	protected void configureGraphicalViewer() {
		super.configureGraphicalViewer();
		getGraphicalViewer().setRootEditPart(new FreeformGraphicalRootEditPart());
		getGraphicalViewer().setEditPartFactory((context, model) -> part(model));
	}

	@Override
	protected void initializeGraphicalViewer() {
		getGraphicalViewer().setContents(SHEET);
	}

	@Override
	public GraphicalViewer getGraphicalViewer() {
		return super.getGraphicalViewer();
	}

	/** Returns the part of the rectangle. */
	AbstractGraphicalEditPart rectangle() {
		return (AbstractGraphicalEditPart) getGraphicalViewer().getEditPartRegistry().get(RECTANGLE);
	}

	@Override
	public void doSave(IProgressMonitor monitor) {
		throw new UnsupportedOperationException("there is nothing to save");
	}

	private static EditPart part(Object model) {
		EditPart part = SHEET.equals(model) ? new SheetPart() : new RectanglePart();
		part.setModel(model);
		return part;
	}

	/** The sheet. */
	private static final class SheetPart extends AbstractGraphicalEditPart {

		@Override
		protected IFigure createFigure() {
			FreeformLayer layer = new FreeformLayer();
			layer.setLayoutManager(new FreeformLayout());
			return layer;
		}

		@Override
		protected List<?> getModelChildren() {
			return List.of(RECTANGLE);
		}

		@Override
		protected void createEditPolicies() {
			installEditPolicy(EditPolicy.LAYOUT_ROLE, new StillPolicy());
		}
	}

	/** The rectangle. */
	private static final class RectanglePart extends AbstractGraphicalEditPart {

		private static final Rectangle PLACE = new Rectangle(200, 200, 60, 40);

		@Override
		protected IFigure createFigure() {
			RectangleFigure figure = new RectangleFigure();
			figure.setBackgroundColor(ColorConstants.lightGray);
			figure.setBounds(PLACE);
			return figure;
		}

		@Override
		protected void createEditPolicies() {
			installEditPolicy(EditPolicy.PRIMARY_DRAG_ROLE, new ResizableEditPolicy());
		}
	}

	/** Lets the rectangle be dragged and leaves it where it was. */
	private static final class StillPolicy extends AbstractEditPolicy {

		@Override
		public Command getCommand(Request request) {
			return RequestConstants.REQ_MOVE_CHILDREN.equals(request.getType()) ? new Command() {
				// keeps everything as it is
			} : null;
		}
	}
}
