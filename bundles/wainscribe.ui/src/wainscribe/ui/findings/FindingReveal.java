// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.findings;

import static java.util.Objects.requireNonNull;

import org.eclipse.core.runtime.Adapters;
import org.eclipse.core.runtime.ILog;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IEditorReference;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;

import wainscribe.ui.ElementSelector;
import wainscribe.ui.RoomEditors;
import wainscribe.ui.findings.FindingsSource.RoomFinding;
import wainscribe.ui.session.RoomSession;

/** Selects in the drawing what a finding is about. */
final class FindingReveal {

	private final IWorkbenchPage page;

	FindingReveal(IWorkbenchPage page) {
		this.page = requireNonNull(page);
	}

	/** Selects it where the room is open; the list keeps the keyboard. */
	void show(RoomFinding found) {
		for (IEditorReference reference : page.getEditorReferences()) {
			IEditorPart editor = reference.getEditor(false);
			if (editor != null && Adapters.adapt(editor, RoomSession.class) == found.room()) {
				page.bringToTop(editor);
				select(editor, found);
				return;
			}
		}
	}

	/** Opens the room, selects it there and goes to the drawing. */
	void open(IStructuredSelection selection) {
		if (selection.getFirstElement() instanceof RoomFinding found) {
			try {
				select(RoomEditors.open(page, found.room(), true), found);
			} catch (PartInitException e) {
				ILog.get().log(e.getStatus());
			}
		}
	}

	private static void select(IEditorPart editor, RoomFinding found) {
		ElementSelector selector = Adapters.adapt(editor, ElementSelector.class);
		if (selector != null) {
			selector.select(found.finding().wall(), FindingWords.selectionKey(found.finding()));
		}
	}
}
