// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.actions;

import java.util.List;

import org.eclipse.gef.ui.actions.ActionRegistry;
import org.eclipse.ui.IWorkbenchPart;
import org.eclipse.ui.actions.ActionFactory;

import wainscribe.ui.elevation.Messages;
import wainscribe.ui.elevation.TableIcon;
import wainscribe.ui.elevation.policies.FrameLockEditPolicy;

/** The actions of an editor beside those that every graphical editor has. */
public final class TableActions {

	private TableActions() {
	}

	/**
	 * Creates the actions.
	 *
	 * @param part      the editor
	 * @param registry  takes them
	 * @param following ids of actions that are asked anew when the selection changes
	 */
	public static void create(IWorkbenchPart part, ActionRegistry registry, List<Object> following) {
		RequestAction lock = new RequestAction(part, TableContextMenu.LOCK, Messages.TableActions_Lock, TableIcon.LOCK,
				FrameLockEditPolicy.LOCK);
		RequestAction release = new RequestAction(part, TableContextMenu.RELEASE, Messages.TableActions_Release,
				TableIcon.RELEASE, FrameLockEditPolicy.RELEASE);
		registry.registerAction(lock);
		registry.registerAction(release);
		// trade pictures only
		registry.getAction(ActionFactory.DELETE.getId()).setImageDescriptor(null);
		following.add(lock.getId());
		following.add(release.getId());
	}
}
