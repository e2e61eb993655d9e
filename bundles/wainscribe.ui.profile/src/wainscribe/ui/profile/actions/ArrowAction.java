// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile.actions;

import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.IAction;

import wainscribe.ui.drafting.tools.TableEditDomain;
import wainscribe.ui.profile.Messages;
import wainscribe.ui.profile.ProfileIcon;

/** Makes the pointer the arrow again. */
final class ArrowAction extends Action {

	private final TableEditDomain domain;

	ArrowAction(TableEditDomain domain) {
		super(Messages.SectionToolBar_Select, IAction.AS_RADIO_BUTTON);
		this.domain = domain;
		setImageDescriptor(ProfileIcon.SELECT.descriptor());
		setToolTipText(Messages.SectionToolBar_Select);
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
