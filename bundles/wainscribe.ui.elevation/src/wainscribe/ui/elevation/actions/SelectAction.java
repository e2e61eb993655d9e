// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.actions;

import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.IAction;

import wainscribe.ui.drafting.tools.TableEditDomain;
import wainscribe.ui.elevation.Messages;
import wainscribe.ui.elevation.TableIcon;

/** Makes the pointer the arrow again. */
public final class SelectAction extends Action {

	private final TableEditDomain domain;

	/** Creates the action of a domain. */
	public SelectAction(TableEditDomain domain) {
		super(Messages.TableToolBar_Select, IAction.AS_RADIO_BUTTON);
		this.domain = domain;
		setImageDescriptor(TableIcon.SELECT.descriptor());
		setToolTipText(Messages.TableToolBar_Select);
		domain.addToolListener(this::follow);
		follow();
	}

	@Override
	public void run() {
		if (isChecked() && domain.getActiveTool() != domain.getDefaultTool()) {
			domain.loadDefaultTool();
		}
	}

	private void follow() {
		setChecked(domain.getActiveTool() == domain.getDefaultTool());
	}
}
