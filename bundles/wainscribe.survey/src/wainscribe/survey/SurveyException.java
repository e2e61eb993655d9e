// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey;

import java.util.Objects;

/** A survey that was refused; the message is the one line to show. */
public final class SurveyException extends Exception {

	private static final long serialVersionUID = 1L;

	private final transient SurveyProblem problem;

	/**
	 * Creates the exception.
	 *
	 * @param file    name of the survey file
	 * @param problem why it was refused
	 */
	public SurveyException(String file, SurveyProblem problem) {
		super(Objects.requireNonNull(problem).inFile(file));
		this.problem = problem;
	}

	/** Returns why the survey was refused. */
	public SurveyProblem problem() {
		return problem;
	}
}
