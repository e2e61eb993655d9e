// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.properties;

import org.eclipse.jface.viewers.ComboBoxCellEditor;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;

/** A drop-down for a property with few values. */
final class ChoiceEditor extends ComboBoxCellEditor {

	private final Choices choices;
	private Object given;

	ChoiceEditor(Composite parent, Choices choices) {
		super(parent, choices.names(), SWT.READ_ONLY);
		this.choices = choices;
		setActivationStyle(DROP_DOWN_ON_MOUSE_ACTIVATION);
	}

	@Override
	protected void doSetValue(Object value) {
		given = value;
		Object own = value instanceof Decision decision ? decision.own() : value;
		super.doSetValue(Math.max(0, choices.values().indexOf(Choice.unwrapped(own))));
	}

	@Override
	protected Object doGetValue() {
		int index = (Integer) super.doGetValue();
		Object value = index < 0 ? null : choices.values().get(index);
		return given instanceof Decision decision ? decision.with(value) : new Choice(value);
	}
}
