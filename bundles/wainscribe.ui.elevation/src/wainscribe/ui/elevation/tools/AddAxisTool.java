// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.tools;

import org.eclipse.gef.EditPart;
import org.eclipse.gef.EditPartViewer;
import org.eclipse.gef.requests.CreationFactory;
import org.eclipse.gef.tools.CreationTool;

import wainscribe.model.Axis;
import wainscribe.model.WainscribeFactory;
import wainscribe.model.Wall;
import wainscribe.ui.elevation.table.LineKey;

/** Marks one axis by a click, selects it, and gives the pointer back. */
public final class AddAxisTool extends CreationTool {

	/** Creates the tool. */
	public AddAxisTool() {
		super(new Maker());
		setUnloadWhenFinished(true);
	}

	/** An axis is not drawn out. */
	@Override
	protected boolean handleDragStarted() {
		return false;
	}

	@Override
	protected void performCreation(int button) {
		Axis made = (Axis) getCreateRequest().getNewObject();
		EditPartViewer viewer = getCurrentViewer();
		executeCurrentCommand();
		if (viewer != null && made.eContainer() instanceof Wall wall
				&& viewer.getEditPartRegistry().get(new LineKey(wall, made)) instanceof EditPart part) {
			viewer.flush();
			viewer.select(part);
		}
	}

	/** Makes axes for requests. */
	private static final class Maker implements CreationFactory {

		@Override
		public Object getNewObject() {
			return WainscribeFactory.eINSTANCE.createAxis();
		}

		@Override
		public Object getObjectType() {
			return Axis.class;
		}
	}
}
