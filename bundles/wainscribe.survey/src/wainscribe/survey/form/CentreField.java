// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey.form;

import java.util.Optional;

import org.eclipse.emf.ecore.EObject;

import wainscribe.model.length.LengthUnit;

/** Says that x and y are those of the centre. The model keeps the lower left corner, so it is never written. */
record CentreField(String key) implements NoteField {

	private static final String CENTRE = "centre"; //$NON-NLS-1$

	@Override
	public void read(EObject target, String text, ReadingContext context) throws ValueException {
		if (!CENTRE.equalsIgnoreCase(text)) {
			throw new ValueException(Messages.CentreField_Expected);
		}
	}

	@Override
	public Optional<String> write(EObject source, LengthUnit units) {
		return Optional.empty();
	}
}
