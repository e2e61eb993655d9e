// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

import wainscribe.model.Home;
import wainscribe.model.Room;
import wainscribe.model.length.LengthUnit;

/**
 * A survey file that was read and checked.
 *
 * @param file     name of the file as messages show it
 * @param units    unit of its bare numbers; null if the file names none
 * @param rows     its rows, for a preview
 * @param home     what it says about the home; complete only if there is no error
 * @param rooms    its rooms in the order of the file; complete only if there is no error
 * @param problems all that is wrong or doubtful, in the order of the file
 */
public record Survey(String file, LengthUnit units, List<SurveyRow> rows, Home home, List<Room> rooms,
		List<SurveyProblem> problems) {

	/** Copies the lists; refuses nulls except for {@code units}. */
	public Survey {
		Objects.requireNonNull(file);
		rows = List.copyOf(rows);
		Objects.requireNonNull(home);
		rooms = List.copyOf(rooms);
		problems = List.copyOf(problems);
	}

	/** Returns the first problem for which the survey is refused, if any. */
	public Optional<SurveyProblem> firstError() {
		return problems.stream().filter(SurveyProblem::isError).findFirst();
	}

	/**
	 * Returns this survey if it can be used.
	 *
	 * @throws SurveyException with the first error, if there is any
	 */
	public Survey orRefuse() throws SurveyException {
		Optional<SurveyProblem> error = firstError();
		if (error.isPresent()) {
			throw new SurveyException(file, error.get());
		}
		return this;
	}
}
