// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile.session;

import java.util.Objects;

import org.eclipse.emf.common.command.AbstractCommand;

/** Puts another state on the desk: a step of the history of a profile. Refuses to change nothing. */
final class DrawProfileCommand extends AbstractCommand {

	private final ProfileSession session;
	private final DeskState after;
	private DeskState before;

	/**
	 * Creates a step.
	 *
	 * @param label   its name in the menu
	 * @param session whose profile is changed
	 * @param after   what it leaves behind
	 */
	DrawProfileCommand(String label, ProfileSession session, DeskState after) {
		super(label);
		this.session = Objects.requireNonNull(session);
		this.after = Objects.requireNonNull(after);
	}

	@Override
	protected boolean prepare() {
		return !after.equals(session.state());
	}

	@Override
	public void execute() {
		before = session.state();
		session.put(after);
	}

	@Override
	public void undo() {
		session.put(before);
	}

	@Override
	public void redo() {
		session.put(after);
	}
}
