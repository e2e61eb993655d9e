// SPDX-License-Identifier: EPL-2.0
package wainscribe.takeoff.cutting;

import java.math.BigDecimal;
import java.util.Map;
import java.util.regex.Pattern;

import wainscribe.model.length.Length;
import wainscribe.model.length.LengthParser;
import wainscribe.model.length.LengthSyntaxException;
import wainscribe.model.length.LengthUnit;

/**
 * A row of a cutting file.
 *
 * @param file   the file as it was named
 * @param number physical line, the first is 1
 * @param cells  stripped cells by column; none for columns the file does not have
 * @param units  unit of bare numbers, null if nothing says one
 */
record CuttingRow(String file, long number, Map<String, String> cells, LengthUnit units) {

	private static final Pattern WHOLE = Pattern.compile("\\d{1,9}"); //$NON-NLS-1$
	private static final Pattern MONEY = Pattern.compile("\\d{1,9}(\\.\\d{1,4})?"); //$NON-NLS-1$
	private static final int LONGEST_SHOWN = 60;

	/** Returns the text of a cell, empty if there is none. */
	String text(String column) {
		return cells.getOrDefault(column, ""); //$NON-NLS-1$
	}

	/** Returns the text of a cell that must not be empty. */
	String name(String column, String expected) throws CuttingFileException {
		String text = text(column);
		if (text.isEmpty()) {
			throw problem(column, "\"\": expected " + expected); //$NON-NLS-1$
		}
		return text;
	}

	/** Returns a length above zero. */
	Length length(String column) throws CuttingFileException {
		String text = text(column);
		Length length = parsed(column, text, units == null ? LengthUnit.MILLIMETRE : units);
		if (units == null && !length.equals(parsed(column, text, LengthUnit.INCH))) {
			throw problem(column, quoted(text) + ": expected a unit, such as 1842mm, a line \"# units: in\" or \"# units: mm\"" //$NON-NLS-1$
					+ " before the header, or the option --units"); //$NON-NLS-1$
		}
		if (length.signum() <= 0) {
			throw problem(column, quoted(text) + ": expected a length above zero"); //$NON-NLS-1$
		}
		return length;
	}

	private Length parsed(String column, String text, LengthUnit unit) throws CuttingFileException {
		try {
			return new LengthParser(unit).parse(text);
		} catch (LengthSyntaxException e) {
			throw problem(column, e.getMessage());
		}
	}

	/** Returns an amount of money, not below zero. */
	BigDecimal money(String column) throws CuttingFileException {
		String text = text(column);
		if (!MONEY.matcher(text).matches()) {
			throw problem(column, quoted(text) + ": expected the price of one length, such as 12.50"); //$NON-NLS-1$
		}
		return new BigDecimal(text);
	}

	/** Returns a whole number of at least the given one. */
	int whole(String column, int least, String expected) throws CuttingFileException {
		String text = text(column);
		int number = WHOLE.matcher(text).matches() ? Integer.parseInt(text) : -1;
		if (number < least) {
			throw problem(column, quoted(text) + ": expected " + expected); //$NON-NLS-1$
		}
		return number;
	}

	CuttingFileException problem(String column, String expected) {
		return new CuttingFileException(file, number, column, expected);
	}

	static String quoted(String text) {
		return '"' + (text.length() > LONGEST_SHOWN ? text.substring(0, LONGEST_SHOWN) + "..." : text) + '"'; //$NON-NLS-1$
	}
}
