// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey.table;

/**
 * The first cell of a line that begins with a quote but does not end with one.
 *
 * @param number number of the cell, the first is 1
 * @param text   the cell as far as the line goes
 */
record UnclosedCell(int number, String text) {

	/** Finds the cell; the last of the line if all are closed. */
	static UnclosedCell in(String line) {
		int start = 0;
		int number = 1;
		while (true) {
			int end = endOf(line, start);
			boolean isLast = end >= line.length();
			String cell = line.substring(start, Math.min(end, line.length()));
			boolean isQuoted = cell.stripLeading().startsWith("\""); //$NON-NLS-1$
			boolean isClosed = cell.strip().length() > 1 && cell.stripTrailing().endsWith("\"") && !hasTextAfterQuote(cell.strip()); //$NON-NLS-1$
			if (isLast || isQuoted && !isClosed) {
				return new UnclosedCell(number, cell.strip());
			}
			start = end + 1;
			number++;
		}
	}

	private static boolean hasTextAfterQuote(String cell) {
		return cell.substring(1, cell.length() - 1).replace("\"\"", "").indexOf('"') >= 0; //$NON-NLS-1$ //$NON-NLS-2$
	}

	/** Returns where the cell ends: at a comma outside quotes, or at the end of the line. */
	private static int endOf(String line, int start) {
		boolean quoted = false;
		for (int i = start; i < line.length(); i++) {
			char c = line.charAt(i);
			if (c == '"' && (quoted || line.substring(start, i).isBlank())) {
				quoted = !quoted;
			} else if (c == ',' && !quoted) {
				return i;
			}
		}
		return line.length();
	}
}
