// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.handlers;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.handlers.HandlerUtil;

import wainscribe.ui.RoomEditors;
import wainscribe.ui.session.RoomSession;

/** Opens the elevations of the selected room. */
public final class OpenRoomHandler extends AbstractHandler {

	@Override
	public Object execute(ExecutionEvent event) throws ExecutionException {
		RoomSession room = Target.room(event).orElse(null);
		if (room != null) {
			try {
				RoomEditors.open(HandlerUtil.getActiveWorkbenchWindowChecked(event).getActivePage(), room, true);
			} catch (PartInitException e) {
				throw new ExecutionException(e.getLocalizedMessage(), e);
			}
		}
		return null;
	}
}
