// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.properties;

import org.eclipse.jface.viewers.CellEditor;
import org.eclipse.jface.viewers.ILabelProvider;
import org.eclipse.jface.viewers.LabelProvider;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.views.properties.PropertyDescriptor;

/**
 * A property that is typed.
 *
 * @param <T> the kind of value
 */
public final class TextValueDescriptor<T> extends PropertyDescriptor {

	private final ValueText<T> kind;
	private final boolean required;

	/**
	 * Creates a descriptor.
	 *
	 * @param id       of the property
	 * @param name     shown beside the value
	 * @param kind     reads and writes values
	 * @param required whether it must have a value
	 */
	public TextValueDescriptor(Object id, String name, ValueText<T> kind, boolean required) {
		super(id, name);
		this.kind = kind;
		this.required = required;
	}

	@Override
	public CellEditor createPropertyEditor(Composite parent) {
		return new TextValueEditor<>(parent, kind, required);
	}

	@Override
	public ILabelProvider getLabelProvider() {
		return LabelProvider.createTextProvider(this::shown);
	}

	@SuppressWarnings("unchecked")
	private String shown(Object value) {
		if (!(value instanceof Decision decision)) {
			return value == null ? "" : kind.shown((T) value); //$NON-NLS-1$
		}
		if (decision.own() != null || decision.effective() == null) {
			return decision.own() == null ? decision.origin() : kind.shown((T) decision.own());
		}
		return NLS.bind(Messages.Decision_Inherited, kind.shown((T) decision.effective()), decision.origin());
	}
}
