// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey.form;

import wainscribe.model.length.Length;
import wainscribe.model.length.LengthFormat;
import wainscribe.model.length.LengthParser;
import wainscribe.model.length.LengthSyntaxException;
import wainscribe.model.length.LengthUnit;

/** A length within what a room can have. */
enum LengthForm implements ValueForm {

	/** A size: above zero. */
	SIZE,
	/** A distance or projection: zero or more. */
	DISTANCE,
	/** A difference, which may point either way. */
	OFFSET;

	/** Nothing measured with a tape indoors is longer. */
	static final Length LONGEST = Length.ofMillimetres(200_000);

	@Override
	public Length read(String text, ReadingContext context) throws ValueException {
		LengthUnit units = context.units();
		LengthParser.Reading reading = parsed(text, units == null ? LengthUnit.MILLIMETRE : units);
		if (units == null && !reading.equals(parsed(text, LengthUnit.INCH))) {
			throw new ValueException("expected a unit, such as 72 1/2\" or 1842mm, or a line # units: in or # units: mm above the header"); //$NON-NLS-1$
		}
		Length length = reading.nearest();
		checkRange(length);
		if (!reading.isExact()) {
			context.remark("no tape has this mark; kept as " + LengthFormat.asStored(length)); //$NON-NLS-1$
		}
		return length;
	}

	private static LengthParser.Reading parsed(String text, LengthUnit units) throws ValueException {
		try {
			return new LengthParser(units).read(text);
		} catch (LengthSyntaxException e) {
			throw new ValueException(e.reason());
		}
	}

	private void checkRange(Length length) throws ValueException {
		if (this == SIZE && length.signum() <= 0) {
			throw new ValueException("expected a length above 0"); //$NON-NLS-1$
		}
		if (this == DISTANCE && length.signum() < 0) {
			throw new ValueException("expected a length of 0 or more"); //$NON-NLS-1$
		}
		if (length.abs().isMoreThan(LONGEST)) {
			throw new ValueException("expected a length of at most 200 m"); //$NON-NLS-1$
		}
	}

	@Override
	public String write(Object value, LengthUnit units) {
		return LengthFormat.asMeasured((Length) value, units);
	}
}
