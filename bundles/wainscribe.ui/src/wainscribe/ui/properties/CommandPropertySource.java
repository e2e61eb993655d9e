// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.properties;

import static java.util.Objects.requireNonNull;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.command.CommandStack;
import org.eclipse.ui.views.properties.IPropertySource;

/** Properties whose every edit is one step of an undo history. */
public abstract class CommandPropertySource implements IPropertySource {

	private final CommandStack history;

	/**
	 * Creates properties.
	 *
	 * @param history takes the steps
	 */
	protected CommandPropertySource(CommandStack history) {
		this.history = requireNonNull(history);
	}

	/**
	 * Makes the step that gives a property a value.
	 *
	 * @param id    of the property
	 * @param value the bare value, null for none
	 */
	protected abstract Command change(Object id, Object value);

	@Override
	public final void setPropertyValue(Object id, Object value) {
		Object bare = value instanceof Decision decision ? decision.own() : Choice.unwrapped(value);
		Command command = change(id, bare);
		if (command.canExecute()) {
			history.execute(command);
		} else {
			command.dispose();
		}
	}

	@Override
	public final void resetPropertyValue(Object id) {
		setPropertyValue(id, null);
	}

	@Override
	public Object getEditableValue() {
		return null;
	}
}
