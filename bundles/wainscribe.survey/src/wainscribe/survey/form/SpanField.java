// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey.form;

import java.util.Optional;

import org.eclipse.emf.ecore.EObject;

import wainscribe.model.Brief;
import wainscribe.model.length.Length;
import wainscribe.model.length.LengthUnit;

/** The wished frame width of a brief, {@code LO..HI}; either end may be left open. */
record SpanField(String key) implements NoteField {

	private static final String TO = ".."; //$NON-NLS-1$

	@Override
	public void read(EObject target, String text, ReadingContext context) throws ValueException {
		int to = text.indexOf(TO);
		if (to < 0 || text.strip().equals(TO)) {
			throw new ValueException(Messages.SpanField_Syntax);
		}
		Length least = end(text.substring(0, to), context);
		Length most = end(text.substring(to + TO.length()), context);
		if (least != null && most != null && most.isLessThan(least)) {
			throw new ValueException(Messages.SpanField_Order);
		}
		Brief brief = (Brief) target;
		brief.setFrameWidthMin(least);
		brief.setFrameWidthMax(most);
	}

	private static Length end(String text, ReadingContext context) throws ValueException {
		return text.isBlank() ? null : LengthForm.SIZE.read(text.strip(), context);
	}

	@Override
	public Optional<String> write(EObject source, LengthUnit units) {
		Brief brief = (Brief) source;
		if (brief.getFrameWidthMin() == null && brief.getFrameWidthMax() == null) {
			return Optional.empty();
		}
		return Optional.of(end(brief.getFrameWidthMin(), units) + TO + end(brief.getFrameWidthMax(), units));
	}

	private static String end(Length length, LengthUnit units) {
		return length == null ? "" : LengthForm.SIZE.write(length, units); //$NON-NLS-1$
	}
}
