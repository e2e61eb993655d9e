// SPDX-License-Identifier: EPL-2.0
package wainscribe.model.length;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Locale;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads lengths in any spelling a carpenter uses.
 * <p>
 * {@code 6' 1 1/2"}, {@code 6ft 1.5in}, {@code 73 1/2}, {@code 73-1/2"}, {@code 1.85 m}, {@code 184.2cm}, {@code 1842mm},
 * {@code 1850}, typographic quotes and vulgar fractions such as {@code 72½}, and sums and differences of these:
 * {@code 24 + 3/8}, {@code 6' - 1/2"}. A bare number is in the default unit.
 */
public final class LengthParser {

	private static final String NUMBER = "\\d{1,12}(?:[.]\\d{1,12})?|[.]\\d{1,12}"; //$NON-NLS-1$
	private static final String FRACTION = "\\d{1,9}\\s*/\\s*\\d{1,9}"; //$NON-NLS-1$
	private static final String MAGNITUDE = "(?:(?<whole>\\d{1,9})(?:\\s+|-))?(?<frac>" + FRACTION + ")|(?<num>" + NUMBER + ")"; //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
	private static final String UNIT = "''|'|\"|(?:feet|foot|ft|inches|inch|in|mm|cm|m)(?!\\p{L})"; //$NON-NLS-1$
	/** A part is a number or mixed fraction and perhaps a unit; parts follow each other, joined by nothing, + or -. */
	private static final Pattern PART = Pattern
			.compile("\\s*(?<sign>[+-])?\\s*(?:" + MAGNITUDE + ")\\s*(?:(?<unit>" + UNIT + ")|(?![\\p{L}\\d.'\"]))"); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
	/** On drawings a hyphen joins feet and inches: 6'-1 1/2" is 6 ft 1 1/2 in; a difference has spaces round its sign. */
	private static final Pattern JOINING_HYPHEN = Pattern.compile("(?<=['t])-(?=\\d)"); //$NON-NLS-1$
	private static final int LONGEST_TEXT = 80;

	private final LengthUnit defaultUnit;

	/**
	 * Creates a parser.
	 *
	 * @param defaultUnit unit of bare numbers
	 */
	public LengthParser(LengthUnit defaultUnit) {
		this.defaultUnit = Objects.requireNonNull(defaultUnit);
	}

	/**
	 * Reads a length exactly.
	 *
	 * @param text what was typed
	 * @return the length
	 * @throws LengthSyntaxException if the text is no length, or one that no tape has (not a whole number of 1/8000 mm)
	 */
	public Length parse(String text) {
		Reading reading = read(text);
		if (!reading.isExact()) {
			throw new LengthSyntaxException(quoted(text), "no tape has this mark; expected a multiple of 1/64 in or 0.001 mm" //$NON-NLS-1$
					+ " (nearest is " + LengthFormat.asStored(reading.nearest()) + ")"); //$NON-NLS-1$ //$NON-NLS-2$
		}
		return reading.nearest();
	}

	/**
	 * Reads a length and keeps to the nearest 1/64 in or 0.001 mm where the text names no mark of a tape.
	 *
	 * @param text what was typed
	 * @return the length, and whether it is exactly what was typed
	 * @throws LengthSyntaxException if the text is no length
	 */
	public Reading read(String text) {
		Objects.requireNonNull(text);
		if (text.length() > LONGEST_TEXT) {
			throw new LengthSyntaxException(quoted(text), "expected a length such as " + example()); //$NON-NLS-1$
		}
		String plain = normalised(text);
		Matcher matcher = PART.matcher(plain);
		Ratio sum = Ratio.ZERO;
		LengthUnit system = null;
		String previousUnit = null;
		boolean isNegative = false; // inches without a sign take that of their feet: -6' 1" is -73"
		int position = 0;
		while (position < plain.length()) {
			matcher.region(position, plain.length());
			if (!matcher.lookingAt() || previousUnit != null && matcher.group("sign") == null && !follows(previousUnit, matcher.group("unit"))) { //$NON-NLS-1$ //$NON-NLS-2$
				throw new LengthSyntaxException(quoted(text), "expected a length such as " + example()); //$NON-NLS-1$
			}
			String unit = matcher.group("unit") == null ? implied(previousUnit) : matcher.group("unit"); //$NON-NLS-1$ //$NON-NLS-2$
			Ratio part = magnitude(matcher, text).times(BigInteger.valueOf(unitsOf(unit)));
			isNegative = matcher.group("sign") == null ? isNegative : "-".equals(matcher.group("sign")); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
			sum = isNegative ? sum.minus(part) : sum.plus(part);
			system = system == null ? systemOf(unit) : system;
			previousUnit = unit;
			position = matcher.end();
		}
		if (system == null) {
			throw new LengthSyntaxException(quoted(text), "expected a length such as " + example()); //$NON-NLS-1$
		}
		return reading(sum, system, text);
	}

	private static Reading reading(Ratio sum, LengthUnit system, String text) {
		if (sum.numerator().bitLength() - sum.denominator().bitLength() > 60) {
			throw new LengthSyntaxException(quoted(text), "expected a length below 1000 km"); //$NON-NLS-1$
		}
		if (sum.isWhole()) {
			return new Reading(new Length(sum.nearest().longValueExact()), true);
		}
		long step = system == LengthUnit.INCH ? Length.UNITS_PER_SIXTY_FOURTH : Length.UNITS_PER_MILLIMETRE / 1000;
		BigInteger steps = sum.dividedBy(BigInteger.valueOf(step)).nearest();
		return new Reading(new Length(steps.longValueExact() * step), false);
	}

	/** Inches may follow feet without a sign; nothing else may follow anything. */
	private static boolean follows(String previousUnit, String unit) {
		return isFoot(previousUnit) && (unit == null || isInch(unit));
	}

	private String implied(String previousUnit) {
		if (previousUnit == null) {
			return defaultUnit.symbol();
		}
		return isFoot(previousUnit) || isInch(previousUnit) ? LengthUnit.INCH.symbol() : previousUnit;
	}

	private static Ratio magnitude(Matcher matcher, String text) {
		if (matcher.group("num") != null) { //$NON-NLS-1$
			return Ratio.of(new BigDecimal(matcher.group("num"))); //$NON-NLS-1$
		}
		String[] parts = matcher.group("frac").split("/"); //$NON-NLS-1$ //$NON-NLS-2$
		BigInteger denominator = new BigInteger(parts[1].strip());
		if (denominator.signum() == 0) {
			throw new LengthSyntaxException(quoted(text), "a fraction over zero; expected a length such as 72 1/2"); //$NON-NLS-1$
		}
		Ratio fraction = new Ratio(new BigInteger(parts[0].strip()), denominator);
		String whole = matcher.group("whole"); //$NON-NLS-1$
		return whole == null ? fraction : fraction.plus(new Ratio(new BigInteger(whole), BigInteger.ONE));
	}

	private static boolean isFoot(String unit) {
		return "'".equals(unit) || unit.startsWith("f"); //$NON-NLS-1$ //$NON-NLS-2$
	}

	private static boolean isInch(String unit) {
		return "\"".equals(unit) || "''".equals(unit) || unit.startsWith("in"); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
	}

	private static LengthUnit systemOf(String unit) {
		return isFoot(unit) || isInch(unit) ? LengthUnit.INCH : LengthUnit.MILLIMETRE;
	}

	private static long unitsOf(String unit) {
		if (isFoot(unit)) {
			return 12 * Length.UNITS_PER_INCH;
		}
		if (isInch(unit)) {
			return Length.UNITS_PER_INCH;
		}
		return switch (unit) {
			case "mm" -> Length.UNITS_PER_MILLIMETRE; //$NON-NLS-1$
			case "cm" -> 10 * Length.UNITS_PER_MILLIMETRE; //$NON-NLS-1$
			default -> 1000 * Length.UNITS_PER_MILLIMETRE;
		};
	}

	/** Turns typographic quotes, primes, minus signs and vulgar fractions into what a keyboard has. */
	private static String normalised(String text) {
		StringBuilder plain = new StringBuilder();
		for (char c : text.strip().toCharArray()) {
			switch (c) {
				case '\u2032', '\u2019', '\u2018' -> plain.append('\'');
				case '\u2033', '\u201d', '\u201c' -> plain.append('"');
				case '\u2212', '\u2013' -> plain.append('-');
				case '\u2044' -> plain.append('/');
				case '\u00a0', '\u2009', '\u202f' -> plain.append(' ');
				case '\u00bd' -> plain.append(" 1/2"); //$NON-NLS-1$
				case '\u00bc' -> plain.append(" 1/4"); //$NON-NLS-1$
				case '\u00be' -> plain.append(" 3/4"); //$NON-NLS-1$
				case '\u215b' -> plain.append(" 1/8"); //$NON-NLS-1$
				case '\u215c' -> plain.append(" 3/8"); //$NON-NLS-1$
				case '\u215d' -> plain.append(" 5/8"); //$NON-NLS-1$
				case '\u215e' -> plain.append(" 7/8"); //$NON-NLS-1$
				default -> plain.append(c);
			}
		}
		return JOINING_HYPHEN.matcher(plain.toString().strip().toLowerCase(Locale.ROOT)).replaceAll(" "); //$NON-NLS-1$
	}

	private String example() {
		return defaultUnit == LengthUnit.INCH ? "72 1/2 or 1842mm" : "1842 or 72 1/2\""; //$NON-NLS-1$ //$NON-NLS-2$
	}

	private static String quoted(String text) {
		String shown = text.length() > LONGEST_TEXT ? text.substring(0, LONGEST_TEXT) + "..." : text; //$NON-NLS-1$
		return '"' + shown.replaceAll("\\p{Cntrl}", " ") + '"'; //$NON-NLS-1$ //$NON-NLS-2$
	}

	/**
	 * A length that was read.
	 *
	 * @param nearest the length, rounded to 1/64 in or 0.001 mm if the text named no mark
	 * @param isExact whether {@code nearest} is exactly what was typed
	 */
	public record Reading(Length nearest, boolean isExact) {
	}
}
