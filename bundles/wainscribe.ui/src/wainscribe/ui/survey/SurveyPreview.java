// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.survey;

import static java.util.Objects.requireNonNull;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.eclipse.emf.ecore.util.EcoreUtil;

import wainscribe.model.Home;
import wainscribe.model.Room;
import wainscribe.survey.Survey;
import wainscribe.survey.SurveyChange;
import wainscribe.survey.SurveyImport;
import wainscribe.survey.SurveyProblem;
import wainscribe.survey.SurveyReader;
import wainscribe.survey.SurveyRow;

/**
 * What a survey file holds and what it would change; nothing is changed by looking.
 *
 * @param survey  as it was read, with all problems
 * @param changes what an import would change; empty if the survey is refused
 * @param lines   its rows, and problems that belong to no row, in the order of the file
 */
record SurveyPreview(Survey survey, List<SurveyChange> changes, List<Line> lines) {

	/**
	 * One line of the preview.
	 *
	 * @param number   physical line in the file; 0 for the file as a whole
	 * @param row      what was written there; null for a problem where no row could be read
	 * @param problems what is wrong or doubtful there
	 */
	record Line(int number, SurveyRow row, List<SurveyProblem> problems) {

		/** Tells whether the survey is refused for it. */
		boolean isError() {
			return problems.stream().anyMatch(SurveyProblem::isError);
		}
	}

	/** Copies the lists. */
	SurveyPreview {
		requireNonNull(survey);
		changes = List.copyOf(changes);
		lines = List.copyOf(lines);
	}

	/**
	 * Reads a file and tries it on copies of a home and its rooms.
	 *
	 * @throws IOException if the disk fails
	 */
	static SurveyPreview of(Path file, SurveyReader reader, Home home, List<Room> rooms) throws IOException {
		Survey survey = reader.read(file);
		List<Line> lines = lines(survey);
		if (survey.firstError().isPresent()) {
			return new SurveyPreview(survey, List.of(), lines);
		}
		Collection<Room> copies = EcoreUtil.copyAll(rooms);
		return new SurveyPreview(survey, new SurveyImport().into(survey, EcoreUtil.copy(home), new ArrayList<>(copies)).changes(), lines);
	}

	/** Tells whether the survey can be brought in. */
	boolean isUsable() {
		return survey.firstError().isEmpty();
	}

	private static List<Line> lines(Survey survey) {
		Map<Integer, SurveyRow> rows = new LinkedHashMap<>();
		survey.rows().forEach(row -> rows.put(row.row(), row));
		survey.problems().forEach(problem -> rows.putIfAbsent(problem.row(), null));
		return rows.entrySet().stream().sorted(Map.Entry.comparingByKey())
			.map(entry -> new Line(entry.getKey(), entry.getValue(),
				survey.problems().stream().filter(problem -> problem.row() == entry.getKey()).toList()))
			.toList();
	}
}
