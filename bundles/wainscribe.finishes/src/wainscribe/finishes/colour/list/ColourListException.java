// SPDX-License-Identifier: EPL-2.0
package wainscribe.finishes.colour.list;

/** A file that is no list of colours; the message is the one line to show: file, row, column and what was expected. */
public final class ColourListException extends Exception {

	private static final long serialVersionUID = 1L;

	/**
	 * Creates the exception.
	 *
	 * @param file name of the file
	 * @param row physical line, the first is 1; 0 if it concerns the file as a whole
	 * @param column name of the column; empty if it concerns the row or the file as a whole
	 * @param expected what was found, quoted, and what was expected
	 */
	public ColourListException(String file, long row, String column, String expected) {
		super(file + (row == 0 ? "" : ", row " + row) + (column.isEmpty() ? "" : ", column " + column) + ": " + expected); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$ //$NON-NLS-4$ //$NON-NLS-5$
	}
}
