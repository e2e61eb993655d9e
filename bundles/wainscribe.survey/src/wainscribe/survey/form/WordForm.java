// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey.form;

import java.util.Locale;
import java.util.TreeSet;
import java.util.regex.Pattern;

import org.eclipse.osgi.util.NLS;

import wainscribe.model.length.LengthUnit;

/** A short code with a fixed shape. */
enum WordForm implements ValueForm {

	/** ISO 4217 letters of a currency. */
	CURRENCY("[A-Z]{3}", Messages.WordForm_Currency), //$NON-NLS-1$
	/** Two letters of a country. */
	COUNTRY("[A-Z]{2}", Messages.WordForm_Country), //$NON-NLS-1$
	/** A colour on screen. */
	COLOUR("#[0-9A-F]{6}", Messages.WordForm_Colour), //$NON-NLS-1$
	/** The id of a wall pattern that is known. */
	PATTERN("[A-Z0-9._-]{1,100}", null); //$NON-NLS-1$

	private final Pattern shape;
	private final String expected;

	WordForm(String shape, String expected) {
		this.shape = Pattern.compile(shape);
		this.expected = expected;
	}

	@Override
	public String read(String text, ReadingContext context) throws ValueException {
		String upper = text.toUpperCase(Locale.ROOT);
		boolean isKnown = this != PATTERN || context.patterns().contains(text);
		if (!isKnown || !shape.matcher(upper).matches()) {
			throw new ValueException(NLS.bind(Messages.WordForm_Expected, (expected == null ? Words.either(new TreeSet<>(context.patterns())) : expected)));
		}
		return switch (this) {
			case CURRENCY, COUNTRY -> upper;
			case COLOUR -> text.toLowerCase(Locale.ROOT);
			case PATTERN -> text;
		};
	}

	@Override
	public String write(Object value, LengthUnit units) {
		return value.toString();
	}
}
