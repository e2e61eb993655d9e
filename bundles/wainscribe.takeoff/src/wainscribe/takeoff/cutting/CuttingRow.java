// SPDX-License-Identifier: EPL-2.0
package wainscribe.takeoff.cutting;

import java.math.BigDecimal;
import java.util.Map;
import java.util.regex.Pattern;

import wainscribe.model.length.Length;
import wainscribe.model.length.LengthSyntaxException;
import wainscribe.model.length.LengthUnit;

/**
 * A row of a cutting file.
 *
 * @param file   the file as it was named
 * @param number physical line, the first is 1
 * @param cells  stripped cells by column; none for columns the file does not have
 * @param units  unit of bare numbers, null if nothing says one: they are millimetres
 */
record CuttingRow(String file, long number, Map<String, String> cells, LengthUnit units) {

	private static final Pattern WHOLE = Pattern.compile("\\d{1,9}"); //$NON-NLS-1$
	private static final Pattern MONEY = Pattern.compile("\\d{1,9}(\\.\\d{1,2})?"); //$NON-NLS-1$
	/** Sums of parts of a cent would not be the sums of what is shown. */
	private static final Pattern PARTS_OF_A_CENT = Pattern.compile("\\d+\\.\\d{3,}"); //$NON-NLS-1$
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
		Length length = written(column).length();
		if (length.signum() <= 0) {
			throw problem(column, quoted(text(column)) + ": expected a length above zero"); //$NON-NLS-1$
		}
		return length;
	}

	/** Returns a length, of whatever size. */
	WrittenLength written(String column) throws CuttingFileException {
		try {
			return WrittenLength.of(text(column), units);
		} catch (LengthSyntaxException e) {
			throw problem(column, e.getMessage());
		}
	}

	/** Returns an amount of money in whole cents, not below zero. */
	BigDecimal money(String column) throws CuttingFileException {
		String text = text(column);
		if (PARTS_OF_A_CENT.matcher(text).matches()) {
			throw problem(column, quoted(text) + ": expected at most two decimals, such as 12.50"); //$NON-NLS-1$
		}
		if (!MONEY.matcher(text).matches()) {
			throw problem(column, quoted(text) + ": expected the price of one length, such as 12.50"); //$NON-NLS-1$
		}
		return new BigDecimal(text);
	}

	/** Returns a whole number from the least to the most given. */
	int whole(String column, int least, int most, String expected) throws CuttingFileException {
		String text = text(column);
		int number = WHOLE.matcher(text).matches() ? Integer.parseInt(text) : -1;
		if (number < least || number > most) {
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
