// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.drafting.actions;

import java.util.Objects;

import org.eclipse.jface.action.Action;
import org.eclipse.jface.resource.ImageDescriptor;

/** An action that does one thing. */
public final class SimpleAction extends Action {

	private final Runnable task;

	/**
	 * Creates an action.
	 *
	 * @param text  its name
	 * @param image its drawing, null for none
	 * @param task  what it does
	 */
	public SimpleAction(String text, ImageDescriptor image, Runnable task) {
		super(text, image);
		this.task = Objects.requireNonNull(task);
		setToolTipText(text);
	}

	@Override
	public void run() {
		task.run();
	}
}
