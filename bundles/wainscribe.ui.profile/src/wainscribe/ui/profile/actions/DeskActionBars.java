// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile.actions;

import java.util.List;

import org.eclipse.gef.ui.actions.ActionRegistry;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.actions.ActionFactory;
import org.eclipse.ui.part.EditorActionBarContributor;

/** Lets the Edit menu and its keys do what they say on the desk that is active. */
public final class DeskActionBars extends EditorActionBarContributor {

	private static final List<String> GLOBAL = List.of(ActionFactory.UNDO.getId(), ActionFactory.REDO.getId(),
			ActionFactory.DELETE.getId(), ActionFactory.SELECT_ALL.getId());

	@Override
	public void setActiveEditor(IEditorPart editor) {
		ActionRegistry registry = editor == null ? null : editor.getAdapter(ActionRegistry.class);
		for (String id : GLOBAL) {
			getActionBars().setGlobalActionHandler(id, registry == null ? null : registry.getAction(id));
		}
		getActionBars().updateActionBars();
	}
}
