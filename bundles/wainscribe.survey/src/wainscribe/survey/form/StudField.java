// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey.form;

import java.util.Optional;

import org.eclipse.emf.ecore.EObject;

import org.eclipse.osgi.util.NLS;

import wainscribe.model.Wall;
import wainscribe.model.length.LengthUnit;

/** The stud spacing of a wall: a length or {@code unknown}. */
record StudField(String key) implements NoteField {

	private static final String UNKNOWN = "unknown"; //$NON-NLS-1$

	@Override
	public void read(EObject target, String text, ReadingContext context) throws ValueException {
		Wall wall = (Wall) target;
		if (UNKNOWN.equalsIgnoreCase(text)) {
			wall.setStudSpacingUnknown(Boolean.TRUE);
			return;
		}
		try {
			wall.setStudSpacing(LengthForm.SIZE.read(text, context));
		} catch (ValueException e) {
			throw new ValueException(NLS.bind(Messages.StudField_OrUnknown, e.getMessage()));
		}
	}

	@Override
	public Optional<String> write(EObject source, LengthUnit units) {
		Wall wall = (Wall) source;
		if (Boolean.TRUE.equals(wall.getStudSpacingUnknown())) {
			return Optional.of(UNKNOWN);
		}
		return Optional.ofNullable(wall.getStudSpacing()).map(spacing -> LengthForm.SIZE.write(spacing, units));
	}
}
