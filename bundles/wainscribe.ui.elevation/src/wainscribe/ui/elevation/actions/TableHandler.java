// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.actions;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExecutableExtension;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.handlers.HandlerUtil;

import wainscribe.ui.elevation.table.TableZoom;
import wainscribe.ui.elevation.tools.WallWalk;

/** Does what a menu entry or key says with the drawing table that is active: {@code larger, smaller, room, wall, next, previous}. */
public final class TableHandler extends AbstractHandler implements IExecutableExtension {

	private String task = ""; //$NON-NLS-1$

	@Override
	public void setInitializationData(IConfigurationElement config, String property, Object data) {
		task = String.valueOf(data);
	}

	@Override
	public Object execute(ExecutionEvent event) {
		IEditorPart editor = HandlerUtil.getActiveEditor(event);
		TableZoom zoom = editor == null ? null : editor.getAdapter(TableZoom.class);
		WallWalk walk = editor == null ? null : editor.getAdapter(WallWalk.class);
		if (zoom != null && walk != null) {
			run(zoom, walk);
		}
		return null;
	}

	private void run(TableZoom zoom, WallWalk walk) {
		switch (task) {
			case "larger" -> zoom.zoomIn(); //$NON-NLS-1$
			case "smaller" -> zoom.zoomOut(); //$NON-NLS-1$
			case "room" -> zoom.fitRoom(); //$NON-NLS-1$
			case "wall" -> walk.wall().ifPresent(zoom::fitWall); //$NON-NLS-1$
			case "next" -> walk.goBy(1); //$NON-NLS-1$
			case "previous" -> walk.goBy(-1); //$NON-NLS-1$
			default -> throw new IllegalStateException("no such task: " + task); //$NON-NLS-1$
		}
	}
}
