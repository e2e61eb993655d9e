// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.drafting.tools;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.gef.DefaultEditDomain;
import org.eclipse.gef.Tool;
import org.eclipse.ui.IEditorPart;

/** Knows which tool the pointer is, and tells those who show it. */
public final class TableEditDomain extends DefaultEditDomain {

	private List<Runnable> listeners;

	/** Creates the domain of an editor. */
	public TableEditDomain(IEditorPart editor) {
		super(editor);
	}

	/** Starts to tell when the pointer becomes another tool. */
	public void addToolListener(Runnable listener) {
		if (listeners == null) {
			listeners = new ArrayList<>();
		}
		listeners.add(listener);
	}

	@Override
	public void setActiveTool(Tool tool) {
		super.setActiveTool(tool);
		// the superclass chooses the first tool before this object is made
		if (listeners != null) {
			listeners.forEach(Runnable::run);
		}
	}
}
