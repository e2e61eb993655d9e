// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.lining;

import java.util.Optional;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExecutableExtension;
import org.eclipse.ui.ISources;
import org.eclipse.ui.handlers.HandlerUtil;

import wainscribe.commands.Alignment;
import wainscribe.ui.elevation.ElevationEditor;
import wainscribe.ui.elevation.table.DrawingTable;

/** Lines up what is selected in the active editor; its parameter is the name of an {@link Alignment}. */
public final class LiningHandler extends AbstractHandler implements IExecutableExtension {

	private Alignment alignment;

	@Override
	public void setInitializationData(IConfigurationElement config, String property, Object data) {
		alignment = Alignment.valueOf(String.valueOf(data));
	}

	@Override
	public void setEnabled(Object context) {
		Object editor = HandlerUtil.getVariable(context, ISources.ACTIVE_EDITOR_NAME);
		setBaseEnabled(lining(editor).filter(lining -> lining.can(alignment)).isPresent());
	}

	@Override
	public Object execute(ExecutionEvent event) {
		lining(HandlerUtil.getActiveEditor(event)).ifPresent(lining -> lining.run(alignment));
		return null;
	}

	private static Optional<Lining> lining(Object editor) {
		return editor instanceof ElevationEditor elevations && elevations.getGraphicalViewer() != null
				? Optional.of(new Lining(elevations.getGraphicalViewer(), (DrawingTable) elevations.getAdapter(DrawingTable.class)))
				: Optional.empty();
	}
}
