// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey.form;

import java.util.regex.Pattern;

import org.eclipse.osgi.util.NLS;

import wainscribe.model.length.LengthUnit;

/** A whole number between two others. */
record WholeForm(int least, int most, String what) implements ValueForm {

	private static final Pattern DIGITS = Pattern.compile("[0-9]{1,9}"); //$NON-NLS-1$

	@Override
	public Integer read(String text, ReadingContext context) throws ValueException {
		if (DIGITS.matcher(text).matches()) {
			int value = Integer.parseInt(text);
			if (value >= least && value <= most) {
				return value;
			}
		}
		throw new ValueException(NLS.bind(Messages.WholeForm_Range, new Object[] { what, least, most }));
	}

	@Override
	public String write(Object value, LengthUnit units) {
		return value.toString();
	}
}
