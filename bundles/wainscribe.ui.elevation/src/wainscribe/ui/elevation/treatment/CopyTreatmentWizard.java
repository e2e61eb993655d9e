// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.treatment;

import java.util.Objects;

import org.eclipse.core.runtime.CoreException;
import org.eclipse.jface.wizard.Wizard;

import wainscribe.ui.session.RoomSession;

/** Treats other rooms of the home as one is treated; each room gets one step in its own history. */
public final class CopyTreatmentWizard extends Wizard {

	private final RoomSession source;
	private final TreatmentCopy copy;
	private final CopyTreatmentPage page;

	/**
	 * Creates a wizard.
	 *
	 * @param source the room whose treatment is copied
	 * @param copy   does it
	 */
	public CopyTreatmentWizard(RoomSession source, TreatmentCopy copy) {
		this.source = Objects.requireNonNull(source);
		this.copy = Objects.requireNonNull(copy);
		this.page = new CopyTreatmentPage(source);
		setWindowTitle(Messages.CopyTreatmentWizard_Title);
	}

	@Override
	public void addPages() {
		addPage(page);
	}

	@Override
	public boolean performFinish() {
		try {
			copy.run(source.room(), page.chosenRooms(), page.chosenParts());
			return true;
		} catch (CoreException e) {
			page.setErrorMessage(e.getStatus().getMessage());
			return false;
		}
	}
}
