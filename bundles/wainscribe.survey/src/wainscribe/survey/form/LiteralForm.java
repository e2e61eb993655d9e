// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey.form;

import java.util.List;

import org.eclipse.emf.common.util.Enumerator;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EEnumLiteral;

import org.eclipse.osgi.util.NLS;

import wainscribe.model.length.LengthUnit;

/**
 * One of the words of an enumeration.
 *
 * @param words the words this row takes; a part of those the enumeration has
 */
record LiteralForm(EEnum type, List<String> words) implements ValueForm {

	/** The literal that stands for an unanswered question and is never written. */
	static final String UNRECORDED = "unrecorded"; //$NON-NLS-1$

	LiteralForm {
		words = List.copyOf(words);
	}

	/** Takes every word of the enumeration. */
	static LiteralForm of(EEnum type) {
		return new LiteralForm(type, type.getELiterals().stream().map(EEnumLiteral::getLiteral)
				.filter(word -> !UNRECORDED.equals(word)).toList());
	}

	@Override
	public Enumerator read(String text, ReadingContext context) throws ValueException {
		for (String word : words) {
			if (word.equalsIgnoreCase(text)) {
				return type.getEEnumLiteralByLiteral(word).getInstance();
			}
		}
		throw new ValueException(NLS.bind(Messages.LiteralForm_Expected, Words.either(words)));
	}

	@Override
	public String write(Object value, LengthUnit units) {
		return ((Enumerator) value).getLiteral();
	}
}
