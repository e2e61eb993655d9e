// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.properties;

import org.eclipse.jface.viewers.CellEditor;
import org.eclipse.jface.viewers.ILabelProvider;
import org.eclipse.jface.viewers.LabelProvider;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.views.properties.PropertyDescriptor;

/** A property that is chosen from a list. */
public final class ChoiceDescriptor extends PropertyDescriptor {

	private final Choices choices;

	/**
	 * Creates a descriptor.
	 *
	 * @param id      of the property
	 * @param name    shown beside the value
	 * @param choices what can be chosen
	 */
	public ChoiceDescriptor(Object id, String name, Choices choices) {
		super(id, name);
		this.choices = choices;
	}

	@Override
	public CellEditor createPropertyEditor(Composite parent) {
		return new ChoiceEditor(parent, choices);
	}

	@Override
	public ILabelProvider getLabelProvider() {
		return LabelProvider.createTextProvider(this::shown);
	}

	private String shown(Object value) {
		if (!(value instanceof Decision decision)) {
			return choices.nameOf(Choice.unwrapped(value));
		}
		if (decision.own() != null || decision.effective() == null) {
			return decision.own() == null ? decision.origin() : choices.nameOf(decision.own());
		}
		return NLS.bind(Messages.Decision_Inherited, choices.nameOf(decision.effective()), decision.origin());
	}
}
