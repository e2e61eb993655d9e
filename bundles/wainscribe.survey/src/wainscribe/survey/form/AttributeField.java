// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey.form;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

import org.eclipse.emf.common.util.Enumerator;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;

import wainscribe.model.length.LengthUnit;

/**
 * A key whose value is one attribute.
 *
 * @param attribute where it is kept
 * @param form      how it is written
 */
record AttributeField(String key, EAttribute attribute, ValueForm form) implements NoteField {

	AttributeField {
		Objects.requireNonNull(key);
		Objects.requireNonNull(attribute);
		Objects.requireNonNull(form);
	}

	@Override
	public void read(EObject target, String text, ReadingContext context) throws ValueException {
		target.eSet(attribute, form.read(text, context));
	}

	@Override
	public Optional<String> write(EObject source, LengthUnit units) {
		Object value = source.eGet(attribute);
		boolean isEmpty = value == null || value instanceof List<?> list && list.isEmpty()
				|| value instanceof Enumerator word && LiteralForm.UNRECORDED.equals(word.getLiteral());
		return isEmpty ? Optional.empty() : Optional.of(form.write(value, units));
	}
}
