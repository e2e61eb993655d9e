// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.tools;

import java.util.function.Supplier;

import org.eclipse.gef.EditPart;
import org.eclipse.gef.EditPartViewer;
import org.eclipse.gef.requests.CreationFactory;
import org.eclipse.gef.tools.CreationTool;

import wainscribe.model.Placed;

/** Puts one new thing on a wall by a click, selects it, and gives the pointer back. */
public final class AddTool extends CreationTool {

	/**
	 * Creates a tool.
	 *
	 * @param maker makes the thing, with its size and without a place
	 */
	public AddTool(Supplier<Placed> maker) {
		super(new Maker(maker));
		setUnloadWhenFinished(true);
	}

	/** A new thing has its usual size; it is not drawn out. */
	@Override
	protected boolean handleDragStarted() {
		return false;
	}

	@Override
	protected void performCreation(int button) {
		Object made = getCreateRequest().getNewObject();
		EditPartViewer viewer = getCurrentViewer();
		executeCurrentCommand();
		if (viewer != null && viewer.getEditPartRegistry().get(made) instanceof EditPart part) {
			viewer.flush();
			viewer.select(part);
		}
	}

	/** Makes things for requests. */
	private static final class Maker implements CreationFactory {

		private final Supplier<Placed> maker;

		Maker(Supplier<Placed> maker) {
			this.maker = maker;
		}

		@Override
		public Object getNewObject() {
			return maker.get();
		}

		@Override
		public Object getObjectType() {
			return Placed.class;
		}
	}
}
