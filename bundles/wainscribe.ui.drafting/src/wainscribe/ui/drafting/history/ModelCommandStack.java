// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.drafting.history;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;

import org.eclipse.emf.common.command.CompoundCommand;
import org.eclipse.gef.commands.Command;
import org.eclipse.gef.commands.CommandStack;

/**
 * Shows the one undo history of a model to GEF. Keeps nothing: what tools and policies execute here, and what the property
 * sheet executes elsewhere, are steps of the same history. Whoever knows that the history changed calls {@link #changed()}.
 */
public class ModelCommandStack extends CommandStack {

	private final Supplier<org.eclipse.emf.common.command.CommandStack> history;
	private final BooleanSupplier dirty;

	/**
	 * Creates the view of a history.
	 *
	 * @param history the history
	 * @param dirty   tells whether something is not saved
	 */
	public ModelCommandStack(Supplier<org.eclipse.emf.common.command.CommandStack> history, BooleanSupplier dirty) {
		this.history = Objects.requireNonNull(history);
		this.dirty = Objects.requireNonNull(dirty);
	}

	/** Tells those who show what can be undone. */
	public final void changed() {
		notifyListeners();
	}

	@Override
	public void execute(Command command) {
		if (command != null && command.canExecute()) {
			notifyListeners(command, PRE_EXECUTE);
			history.get().execute(modelChange(command));
			notifyListeners(command, POST_EXECUTE);
		}
	}

	@Override
	public boolean canUndo() {
		return history.get().canUndo();
	}

	@Override
	public void undo() {
		if (canUndo()) {
			history.get().undo();
		}
	}

	@Override
	public boolean canRedo() {
		return history.get().canRedo();
	}

	@Override
	public void redo() {
		if (canRedo()) {
			history.get().redo();
		}
	}

	@Override
	public Command getUndoCommand() {
		return shown(history.get().getUndoCommand());
	}

	@Override
	public Command getRedoCommand() {
		return shown(history.get().getRedoCommand());
	}

	@Override
	public boolean isDirty() {
		return dirty.getAsBoolean();
	}

	/** Does nothing: the history knows by itself what was saved. */
	@Override
	public void markSaveLocation() {
		notifyListeners();
	}

	/** Does nothing: the history belongs to the model and outlives this view. */
	@Override
	public void flush() {
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
