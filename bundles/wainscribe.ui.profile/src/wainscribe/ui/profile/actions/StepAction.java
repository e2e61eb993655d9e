// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile.actions;

import java.util.Objects;
import java.util.function.BooleanSupplier;

import org.eclipse.jface.action.Action;

import wainscribe.ui.profile.ProfileIcon;

/** A step on a button, which can be pressed while the step is possible. */
final class StepAction extends Action {

	private final Runnable task;
	private final BooleanSupplier possible;

	StepAction(String text, ProfileIcon icon, Runnable task, BooleanSupplier possible) {
		super(text, icon.descriptor());
		this.task = Objects.requireNonNull(task);
		this.possible = Objects.requireNonNull(possible);
		setToolTipText(text);
		follow();
	}

	/** Looks again whether the step is possible. */
	void follow() {
		setEnabled(possible.getAsBoolean());
	}

	@Override
	public void run() {
		task.run();
	}
}
