// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile.actions;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.runtime.Adapters;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExecutableExtension;
import org.eclipse.ui.handlers.HandlerUtil;

import wainscribe.ui.profile.desk.DeskZoom;

/** Lets the entries of the View menu that draw larger and smaller, and their keys, do so on the desk that is active. */
public final class DeskHandler extends AbstractHandler implements IExecutableExtension {

	private static final String LARGER = "larger"; //$NON-NLS-1$

	private boolean larger;

	@Override
	public void setInitializationData(IConfigurationElement config, String property, Object data) {
		larger = LARGER.equals(data);
	}

	@Override
	public Object execute(ExecutionEvent event) {
		DeskZoom zoom = Adapters.adapt(HandlerUtil.getActiveEditor(event), DeskZoom.class);
		if (zoom != null && larger) {
			zoom.zoomIn();
		} else if (zoom != null) {
			zoom.zoomOut();
		}
		return null;
	}
}
