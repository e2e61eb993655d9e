// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey.form;

import org.eclipse.osgi.util.NLS;

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
			throw new ValueException(Messages.LengthForm_NoUnit);
		}
		Length length = reading.nearest();
		checkRange(length);
		if (!reading.isExact()) {
			context.remark(NLS.bind(Messages.LengthForm_NoTapeMark, LengthFormat.asStored(length)));
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
			throw new ValueException(Messages.LengthForm_NotAboveZero);
		}
		if (this == DISTANCE && length.signum() < 0) {
			throw new ValueException(Messages.LengthForm_BelowZero);
		}
		if (length.abs().isMoreThan(LONGEST)) {
			throw new ValueException(Messages.LengthForm_TooLong);
		}
	}

	@Override
	public String write(Object value, LengthUnit units) {
		return LengthFormat.asMeasured((Length) value, units);
	}
}
