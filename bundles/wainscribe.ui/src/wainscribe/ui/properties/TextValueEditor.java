// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.properties;

import org.eclipse.jface.viewers.TextCellEditor;
import org.eclipse.swt.events.ModifyEvent;
import org.eclipse.swt.events.SelectionEvent;
import org.eclipse.swt.widgets.Composite;

/**
 * A text field for values of one kind. While the text is none, Enter keeps the field open and the message tells what was
 * expected; an empty field is no value.
 *
 * @param <T> the kind of value
 */
final class TextValueEditor<T> extends TextCellEditor {

	private final ValueText<T> kind;
	private final boolean required;
	private Object given;

	/**
	 * Creates a field.
	 *
	 * @param parent   what it lies on
	 * @param kind     reads and writes values
	 * @param required whether an empty field is refused
	 */
	TextValueEditor(Composite parent, ValueText<T> kind, boolean required) {
		super(parent);
		this.kind = kind;
		this.required = required;
		setValidator(value -> refusal());
	}

	/** @param value a {@code T}, a {@link Decision} of one, or null */
	@Override
	protected void doSetValue(Object value) {
		given = value;
		Object own = value instanceof Decision decision ? decision.own() : value;
		super.doSetValue(own == null ? "" : typed(own)); //$NON-NLS-1$
	}

	@Override
	protected Object doGetValue() {
		String typed = text.getText();
		if (typed.isBlank()) {
			return given instanceof Decision decision ? decision.with(null) : null;
		}
		Object value = kind.read(typed);
		return given instanceof Decision decision ? decision.with(value) : value;
	}

	@Override
	public void activate() {
		super.activate();
		setValueValid(true);
	}

	/** The inherited one runs messages through a formatter, which apostrophes for feet and braces would break. */
	@Override
	protected void editOccured(ModifyEvent e) {
		boolean before = isValueValid();
		valueChanged(before, isCorrect(text.getText()));
	}

	@Override
	protected void handleDefaultSelection(SelectionEvent event) {
		if (isCorrect(text.getText())) {
			super.handleDefaultSelection(event);
		} else {
			valueChanged(isValueValid(), false);
			text.selectAll();
		}
	}

	private String refusal() {
		String typed = text.getText();
		if (typed.isBlank()) {
			return required ? Messages.TextValueEditor_Required : null;
		}
		try {
			kind.read(typed);
			return null;
		} catch (IllegalArgumentException e) {
			return e.getLocalizedMessage();
		}
	}

	@SuppressWarnings("unchecked")
	private String typed(Object value) {
		return kind.typed((T) value);
	}
}
