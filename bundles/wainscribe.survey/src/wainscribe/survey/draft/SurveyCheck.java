// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey.draft;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

import wainscribe.model.Home;
import wainscribe.model.Room;
import wainscribe.model.length.LengthUnit;
import wainscribe.survey.SurveyProblem;
import wainscribe.survey.SurveyRow;

/**
 * What the rows of a survey amount to.
 *
 * @param home     the home with what was decided for all of it
 * @param rooms    the rooms in the order of the file
 * @param problems everything wrong or doubtful, in the order of the file
 */
public record SurveyCheck(Home home, List<Room> rooms, List<SurveyProblem> problems) {

	/**
	 * Builds and checks the rooms.
	 *
	 * @param units    unit of bare numbers, null if the file names none
	 * @param patterns ids a brief may name
	 * @param found    problems found so far; more are added
	 */
	public static SurveyCheck of(List<SurveyRow> rows, LengthUnit units, Set<String> patterns, List<SurveyProblem> found) {
		SurveyDraft draft = new SurveyDraft(units, patterns, found);
		if (units != null) {
			draft.home().setUnits(units);
		}
		new DraftBuilder(draft).take(rows);
		RoomCheck check = new RoomCheck(draft);
		draft.rooms().values().forEach(check::check);
		List<Room> rooms = new ArrayList<>(draft.rooms().values());
		ElementIds.assign(draft.home());
		rooms.forEach(ElementIds::assign);
		return new SurveyCheck(draft.home(), rooms, draft.problems());
	}
}
