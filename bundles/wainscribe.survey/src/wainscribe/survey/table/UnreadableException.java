// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey.table;

import wainscribe.survey.SurveyProblem;
import wainscribe.survey.SurveyProblem.Severity;

/** A file that cannot be read on as a table; carries the one problem to report. */
public final class UnreadableException extends Exception {

	private static final long serialVersionUID = 1L;

	private final transient SurveyProblem problem;

	UnreadableException(int row, int cell, String message) {
		this(row, Integer.toString(cell), message);
	}

	UnreadableException(int row, String column, String message) {
		super(message);
		problem = new SurveyProblem(row, column, Severity.ERROR, message);
	}

	/** Returns why. */
	public SurveyProblem problem() {
		return problem;
	}
}
