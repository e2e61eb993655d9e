// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey.form;

import java.math.BigDecimal;
import java.util.regex.Pattern;

import wainscribe.model.length.LengthUnit;

/** An inside angle in degrees, above 0 and below 360. */
enum AngleForm implements ValueForm {

	/** The only one. */
	ANGLE;

	private static final Pattern SYNTAX = Pattern.compile("[0-9]{1,3}(?:[.][0-9]{1,9})?"); //$NON-NLS-1$
	private static final BigDecimal FULL_TURN = BigDecimal.valueOf(360);

	@Override
	public BigDecimal read(String text, ReadingContext context) throws ValueException {
		String number = text.endsWith("\u00b0") ? text.substring(0, text.length() - 1).strip() : text; //$NON-NLS-1$
		if (SYNTAX.matcher(number).matches()) {
			BigDecimal angle = new BigDecimal(number);
			if (angle.signum() > 0 && angle.compareTo(FULL_TURN) < 0) {
				return angle;
			}
		}
		throw new ValueException(Messages.AngleForm_Expected);
	}

	@Override
	public String write(Object value, LengthUnit units) {
		return ((BigDecimal) value).toPlainString();
	}
}
