// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.actions;

import java.util.Optional;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.ui.ISources;
import org.eclipse.ui.handlers.HandlerUtil;

import wainscribe.ui.elevation.ElevationEditor;

/** Takes the existing trim that is selected in the active editor down, or leaves it up after all. */
public final class TakeDownHandler extends AbstractHandler {

	@Override
	public void setEnabled(Object context) {
		setBaseEnabled(of(HandlerUtil.getVariable(context, ISources.ACTIVE_EDITOR_NAME)).flatMap(TakeDown::step).isPresent());
	}

	@Override
	public Object execute(ExecutionEvent event) {
		of(HandlerUtil.getActiveEditor(event)).ifPresent(TakeDown::run);
		return null;
	}

	private static Optional<TakeDown> of(Object editor) {
		return editor instanceof ElevationEditor elevations && elevations.getGraphicalViewer() != null
				? Optional.of(new TakeDown(elevations.getGraphicalViewer())) : Optional.empty();
	}
}
