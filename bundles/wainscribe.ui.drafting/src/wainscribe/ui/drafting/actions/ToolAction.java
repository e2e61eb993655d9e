// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.drafting.actions;

import java.util.function.Supplier;

import org.eclipse.gef.Tool;
import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.IAction;
import org.eclipse.jface.resource.ImageDescriptor;

import wainscribe.ui.drafting.tools.TableEditDomain;

/** Makes the pointer another tool. */
public final class ToolAction extends Action {

	private final TableEditDomain domain;
	private final Supplier<Tool> maker;
	private Tool tool;

	/**
	 * Creates an action.
	 *
	 * @param text   its name
	 * @param icon   its drawing
	 * @param domain knows which tool the pointer is
	 * @param maker  makes the tool when it is taken
	 */
	public ToolAction(String text, ImageDescriptor icon, TableEditDomain domain, Supplier<Tool> maker) {
		super(text, IAction.AS_RADIO_BUTTON);
		this.domain = domain;
		this.maker = maker;
		setImageDescriptor(icon);
		setToolTipText(text);
		domain.addToolListener(this::follow);
		follow();
	}

	@Override
	public void run() {
		if (isChecked()) {
			tool = maker.get();
			domain.setActiveTool(tool);
		}
	}

	private void follow() {
		setChecked(domain.getActiveTool() != null && domain.getActiveTool() == tool);
	}
}
