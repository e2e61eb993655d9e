// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey.form;

import java.util.Objects;
import java.util.Optional;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;

import org.eclipse.osgi.util.NLS;

import wainscribe.model.length.LengthUnit;
import wainscribe.survey.SurveyColumn;

/** What a cell of numbers stands for in the model. */
public final class CellField {

	private final SurveyColumn column;
	private final EAttribute attribute;
	private final ValueForm form;
	private final String required;

	/**
	 * Creates a field.
	 *
	 * @param required what to ask for if the cell is empty; null if it may be empty
	 */
	CellField(SurveyColumn column, EAttribute attribute, ValueForm form, String required) {
		this.column = Objects.requireNonNull(column);
		this.attribute = Objects.requireNonNull(attribute);
		this.form = Objects.requireNonNull(form);
		this.required = required;
	}

	/** Returns the column. */
	public SurveyColumn column() {
		return column;
	}

	/** Puts a value into the model; an empty text puts nothing. */
	public void read(EObject target, String text, ReadingContext context) throws ValueException {
		if (!text.isEmpty()) {
			target.eSet(attribute, form.read(text, context));
		} else if (required != null) {
			throw new ValueException(NLS.bind(Messages.CellField_Required, required));
		}
	}

	/** Writes what the model holds. */
	public Optional<String> write(EObject source, LengthUnit units) {
		return Optional.ofNullable(source.eGet(attribute)).map(value -> form.write(value, units));
	}
}
