// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey.form;

import wainscribe.model.length.LengthUnit;

/** Yes or no. */
enum FlagForm implements ValueForm {

	/** The only one. */
	FLAG;

	private static final String YES = "yes"; //$NON-NLS-1$
	private static final String NO = "no"; //$NON-NLS-1$

	@Override
	public Boolean read(String text, ReadingContext context) throws ValueException {
		if (YES.equalsIgnoreCase(text)) {
			return Boolean.TRUE;
		}
		if (NO.equalsIgnoreCase(text)) {
			return Boolean.FALSE;
		}
		throw new ValueException(Messages.FlagForm_Expected);
	}

	@Override
	public String write(Object value, LengthUnit units) {
		return ((Boolean) value).booleanValue() ? YES : NO;
	}
}
