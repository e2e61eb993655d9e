// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.drafting.history;

import java.util.Objects;

import org.eclipse.gef.commands.Command;

/** Carries a change of the model through GEF's requests. It is never executed by itself: {@link ModelCommandStack} unpacks it. */
public final class ModelCommand extends Command {

	private final org.eclipse.emf.common.command.Command change;

	/**
	 * Wraps a change.
	 *
	 * @param change the change of the model
	 */
	public ModelCommand(org.eclipse.emf.common.command.Command change) {
		super(change.getLabel());
		this.change = Objects.requireNonNull(change);
	}

	/** Returns the change of the model. */
	public org.eclipse.emf.common.command.Command change() {
		return change;
	}

	@Override
	public boolean canExecute() {
		return change.canExecute();
	}

	@Override
	public void execute() {
		change.execute();
	}

	@Override
	public boolean canUndo() {
		return change.canUndo();
	}

	@Override
	public void undo() {
		change.undo();
	}

	@Override
	public void redo() {
		change.redo();
	}
}
