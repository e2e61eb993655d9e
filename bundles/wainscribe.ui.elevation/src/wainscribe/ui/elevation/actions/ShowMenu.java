// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.actions;

import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.IAction;
import org.eclipse.jface.action.IMenuManager;
import org.eclipse.jface.action.Separator;

import wainscribe.ui.elevation.table.DrawingTable;
import wainscribe.ui.elevation.table.Ghost;
import wainscribe.ui.elevation.table.Overlay;

/** What can be shown and hidden on a drawing table: layers of the drawing, what is laid over it, and another wall as a ghost. */
public final class ShowMenu {

	private ShowMenu() {
	}

	/** Adds the entries to a menu. */
	public static void fill(IMenuManager menu, DrawingTable table) {
		LayerAction.all(table).forEach(menu::add);
		menu.add(new Separator());
		for (Overlay overlay : Overlay.values()) {
			menu.add(new ShowAction(overlay, table));
		}
		menu.add(new Separator());
		for (Ghost ghost : Ghost.values()) {
			menu.add(new GhostAction(ghost, table));
		}
	}

	/** Shows or hides what is laid over the drawing. */
	private static final class ShowAction extends Action {

		private final Overlay overlay;
		private final DrawingTable table;

		ShowAction(Overlay overlay, DrawingTable table) {
			super(overlay.label(), IAction.AS_CHECK_BOX);
			this.overlay = overlay;
			this.table = table;
			setChecked(table.overlays().shows(overlay));
		}

		@Override
		public void run() {
			table.overlays().show(overlay, isChecked());
		}
	}

	/** Shows another wall as a ghost. */
	private static final class GhostAction extends Action {

		private final Ghost ghost;
		private final DrawingTable table;

		GhostAction(Ghost ghost, DrawingTable table) {
			super(ghost.label(), IAction.AS_RADIO_BUTTON);
			this.ghost = ghost;
			this.table = table;
			setChecked(table.overlays().ghost() == ghost);
		}

		@Override
		public void run() {
			if (isChecked()) {
				table.overlays().setGhost(ghost);
			}
		}
	}
}
