// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.properties;

import org.eclipse.osgi.util.NLS;

import wainscribe.model.length.Length;
import wainscribe.model.length.LengthFormat;
import wainscribe.model.length.LengthParser;
import wainscribe.model.length.LengthUnit;

/** Lengths in any spelling a carpenter uses, shown in the home's unit. */
public final class LengthText implements ValueText<Length> {

	/** What a length may be. */
	public enum Range {
		/** Sizes. */
		ABOVE_ZERO,
		/** Places and things that may be absent. */
		ZERO_OR_MORE,
		/** Differences in height. */
		ANY
	}

	/** No wall of a dwelling is longer: a missing unit or a slip of the finger. */
	private static final Length LONGEST = Length.ofMillimetres(100_000);

	private final LengthUnit unit;
	private final Range range;

	/**
	 * Creates a kind of length.
	 *
	 * @param unit  in which it is shown and bare numbers are typed
	 * @param range what it may be
	 */
	public LengthText(LengthUnit unit, Range range) {
		this.unit = unit;
		this.range = range;
	}

	@Override
	public String shown(Length value) {
		return LengthFormat.asShown(value, unit);
	}

	@Override
	public String typed(Length value) {
		String shown = shown(value);
		return shown.startsWith("~") ? LengthFormat.asStored(value) : shown; //$NON-NLS-1$
	}

	@Override
	public Length read(String text) {
		Length length = new LengthParser(unit).parse(text);
		if (length.abs().isMoreThan(LONGEST)) {
			throw new IllegalArgumentException(NLS.bind(Messages.LengthText_TooLong, text, shown(LONGEST)));
		}
		if (range == Range.ABOVE_ZERO && length.signum() <= 0) {
			throw new IllegalArgumentException(NLS.bind(Messages.LengthText_ExpectedAboveZero, text));
		}
		if (range == Range.ZERO_OR_MORE && length.signum() < 0) {
			throw new IllegalArgumentException(NLS.bind(Messages.LengthText_ExpectedZeroOrMore, text));
		}
		return length;
	}
}
