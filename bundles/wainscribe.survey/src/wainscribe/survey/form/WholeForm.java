// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey.form;

import java.util.regex.Pattern;

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
		throw new ValueException("expected " + what + " from " + least + " to " + most); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
	}

	@Override
	public String write(Object value, LengthUnit units) {
		return value.toString();
	}
}
