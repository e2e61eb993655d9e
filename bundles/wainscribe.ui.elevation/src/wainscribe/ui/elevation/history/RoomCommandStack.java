// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.history;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

import org.eclipse.emf.common.command.CompoundCommand;
import org.eclipse.gef.commands.Command;
import org.eclipse.gef.commands.CommandStack;

import wainscribe.ui.session.RoomSession;
import wainscribe.ui.session.RoomSessionListener;

/**
 * Shows the one undo history of a room to GEF. Keeps nothing: what tools and policies execute here, and what the property
 * sheet or a finding executes elsewhere, are steps of the same history.
 */
public final class RoomCommandStack extends CommandStack implements RoomSessionListener {

	private final RoomSession session;

	/**
	 * Creates the view of a history; {@link #dispose()} ends it.
	 *
	 * @param session the room
	 */
	public RoomCommandStack(RoomSession session) {
		this.session = Objects.requireNonNull(session);
		session.addListener(this);
	}

	@Override
	public void execute(Command command) {
		if (command != null && command.canExecute()) {
			notifyListeners(command, PRE_EXECUTE);
			session.commandStack().execute(modelChange(command));
			notifyListeners(command, POST_EXECUTE);
		}
	}

	@Override
	public boolean canUndo() {
		return session.commandStack().canUndo();
	}

	@Override
	public void undo() {
		if (canUndo()) {
			session.commandStack().undo();
		}
	}

	@Override
	public boolean canRedo() {
		return session.commandStack().canRedo();
	}

	@Override
	public void redo() {
		if (canRedo()) {
			session.commandStack().redo();
		}
	}

	@Override
	public Command getUndoCommand() {
		return shown(session.commandStack().getUndoCommand());
	}

	@Override
	public Command getRedoCommand() {
		return shown(session.commandStack().getRedoCommand());
	}

	@Override
	public boolean isDirty() {
		return session.isDirty();
	}

	/** Does nothing: the session knows by itself what was saved. */
	@Override
	public void markSaveLocation() {
		notifyListeners();
	}

	/** Does nothing: the history belongs to the room and outlives this view. */
	@Override
	public void flush() {
		notifyListeners();
	}

	@Override
	public void dispose() {
		session.removeListener(this);
	}

	@Override
	public void historyChanged(RoomSession changed) {
		notifyListeners();
	}

	private static Command shown(org.eclipse.emf.common.command.Command command) {
		return command == null ? null : new ModelCommand(command);
	}

	private static org.eclipse.emf.common.command.Command modelChange(Command command) {
		List<org.eclipse.emf.common.command.Command> changes = new ArrayList<>();
		collect(command, changes);
		if (changes.size() == 1) {
			return changes.getFirst();
		}
		return new CompoundCommand(changes.getFirst().getLabel(), changes.getFirst().getDescription(), changes);
	}

	private static void collect(Command command, List<org.eclipse.emf.common.command.Command> changes) {
		switch (command) {
			case ModelCommand model -> changes.add(model.change());
			case org.eclipse.gef.commands.CompoundCommand compound -> {
				for (Object part : compound.getCommands()) {
					collect((Command) part, changes);
				}
			}
			default -> throw new IllegalArgumentException("no change of the model: " + command.getClass().getName()); //$NON-NLS-1$
		}
	}
}
