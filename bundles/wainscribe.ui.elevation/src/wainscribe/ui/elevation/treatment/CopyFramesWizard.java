// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.treatment;

import java.util.List;
import java.util.Objects;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.command.CompoundCommand;
import org.eclipse.jface.wizard.Wizard;

import wainscribe.commands.CopyFramesCommand;
import wainscribe.model.Wall;
import wainscribe.ui.session.RoomSession;

/** Places the frames of one wall on other walls of its room, as one step. */
public final class CopyFramesWizard extends Wizard {

	private final RoomSession session;
	private final Wall source;
	private final CopyFramesPage page;

	/**
	 * Creates a wizard.
	 *
	 * @param session the room
	 * @param source  one of its walls, with frames placed by hand
	 */
	public CopyFramesWizard(RoomSession session, Wall source) {
		this.session = Objects.requireNonNull(session);
		this.source = Objects.requireNonNull(source);
		this.page = new CopyFramesPage(session, source);
		setWindowTitle(Messages.CopyFramesWizard_Title);
	}

	@Override
	public void addPages() {
		addPage(page);
	}

	/** Walls that look so already are left alone. */
	@Override
	public boolean performFinish() {
		List<Command> copies = page.chosen().stream()
				.<Command>map(placing -> new CopyFramesCommand(source, placing.wall(), placing.places()))
				.filter(Command::canExecute).toList();
		if (!copies.isEmpty()) {
			session.commandStack().execute(new CompoundCommand(copies.getFirst().getLabel(), "", copies)); //$NON-NLS-1$
		}
		return true;
	}
}
