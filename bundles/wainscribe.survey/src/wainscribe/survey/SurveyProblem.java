// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey;

import java.util.Objects;

/**
 * Something wrong or doubtful in a survey file.
 *
 * @param row      physical line in the file, the first is 1; 0 if it concerns the file as a whole
 * @param column   name of the column, or its number where the header could not be read; empty for the whole file
 * @param severity whether the survey can be used
 * @param message  one line: the value quoted, then what was expected
 */
public record SurveyProblem(int row, String column, Severity severity, String message) {

	/** How bad a problem is. */
	public enum Severity {
		/** The survey is refused. */
		ERROR,
		/** The survey is taken, but a measurement is doubtful. */
		WARNING,
		/** Nothing is doubtful; something was kept as it is or not used. */
		NOTICE
	}

	/** Refuses nulls. */
	public SurveyProblem {
		Objects.requireNonNull(column);
		Objects.requireNonNull(severity);
		Objects.requireNonNull(message);
	}

	/** Tells whether the survey is refused for it. */
	public boolean isError() {
		return severity == Severity.ERROR;
	}

	/**
	 * Returns the one line to show.
	 *
	 * @param file name of the survey file
	 */
	public String inFile(String file) {
		String line = file + (row == 0 ? "" : ", row " + row + ", column " + column) + ": " + message; //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$ //$NON-NLS-4$
		return QuotedText.onOneLine(line);
	}
}
