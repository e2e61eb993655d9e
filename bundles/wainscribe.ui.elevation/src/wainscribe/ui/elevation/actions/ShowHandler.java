// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.actions;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.runtime.Adapters;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExecutableExtension;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.handlers.HandlerUtil;

import wainscribe.ui.elevation.table.DrawingTable;
import wainscribe.ui.elevation.table.Overlay;
import wainscribe.ui.elevation.table.Overlays;

/** Shows or hides {@code axes}, {@code guides} or the {@code overview}, or shows the next wall as a {@code ghost}. */
public final class ShowHandler extends AbstractHandler implements IExecutableExtension {

	private String task = ""; //$NON-NLS-1$

	@Override
	public void setInitializationData(IConfigurationElement config, String property, Object data) {
		task = String.valueOf(data);
	}

	@Override
	public Object execute(ExecutionEvent event) {
		IEditorPart editor = HandlerUtil.getActiveEditor(event);
		DrawingTable table = Adapters.adapt(editor, DrawingTable.class);
		if (table != null) {
			run(table.overlays());
		}
		return null;
	}

	private void run(Overlays overlays) {
		switch (task) {
			case "axes" -> toggle(overlays, Overlay.AXES); //$NON-NLS-1$
			case "guides" -> toggle(overlays, Overlay.GUIDES); //$NON-NLS-1$
			case "overview" -> toggle(overlays, Overlay.OVERVIEW); //$NON-NLS-1$
			case "ghost" -> overlays.setGhost(overlays.ghost().next()); //$NON-NLS-1$
			default -> throw new IllegalStateException("nothing is shown by " + task); //$NON-NLS-1$
		}
	}

	private static void toggle(Overlays overlays, Overlay overlay) {
		overlays.show(overlay, !overlays.shows(overlay));
	}
}
