// SPDX-License-Identifier: EPL-2.0
package wainscribe.commands;

import java.util.Collection;
import java.util.List;
import java.util.Objects;

import org.eclipse.emf.common.command.AbstractCommand;
import org.eclipse.emf.ecore.EObject;

/**
 * One act of the designer on a room: a named step of its history that can be undone and redone.
 * <p>
 * A command gets all it needs when it is made, reads the old state when it is executed, refuses to execute when it would
 * change nothing, and restores on undo what was there, in its place. It knows no screen and works without one.
 */
public abstract class EditCommand extends AbstractCommand {

	private final EObject subject;
	private ChangeLog log;

	/**
	 * Creates a command.
	 *
	 * @param label   the name of the step in the history, as the designer reads it; never empty
	 * @param subject what is changed; checks and layout look at it again after each step
	 */
	protected EditCommand(String label, EObject subject) {
		super(Objects.requireNonNull(label));
		this.subject = Objects.requireNonNull(subject);
	}

	/** Tells whether executing the command now would be legal and change anything. */
	protected abstract boolean isEffective();

	/**
	 * Changes the model.
	 *
	 * @param changes the only way by which the model is changed; remembers what was there
	 */
	protected abstract void perform(ChangeLog changes);

	@Override
	public final boolean canExecute() {
		return log == null && isEffective();
	}

	@Override
	public final void execute() {
		log = new ChangeLog();
		perform(log);
	}

	@Override
	public final boolean canUndo() {
		return log != null;
	}

	@Override
	public final void undo() {
		log.revert();
	}

	@Override
	public final void redo() {
		log.repeat();
	}

	@Override
	public Collection<?> getResult() {
		return List.of(subject);
	}

	@Override
	public Collection<?> getAffectedObjects() {
		return List.of(subject);
	}
}
