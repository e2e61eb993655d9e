// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import wainscribe.model.Room;
import wainscribe.model.length.LengthUnit;
import wainscribe.survey.SurveyProblem.Severity;
import wainscribe.survey.closure.ClosureCheck;
import wainscribe.survey.closure.Doubt;
import wainscribe.survey.closure.RoomClosure;

/**
 * What reading a survey showed, room by room.
 *
 * @param rooms closure and doubtful measurements of each room
 */
public record SurveyReport(List<RoomClosure> rooms) {

	/** Copies the list. */
	public SurveyReport {
		rooms = List.copyOf(rooms);
	}

	/**
	 * Reports on the rooms of a survey; what was doubtful in its rows is added to the room it belongs to.
	 *
	 * @param survey one without errors
	 */
	public static SurveyReport of(Survey survey) {
		ClosureCheck check = new ClosureCheck(survey.units() == null ? LengthUnit.MILLIMETRE : survey.units());
		Map<Integer, SurveyRow> rows = new HashMap<>();
		survey.rows().forEach(row -> rows.put(row.row(), row));
		List<RoomClosure> rooms = new ArrayList<>();
		for (Room room : survey.rooms()) {
			RoomClosure closure = check.check(room);
			List<Doubt> doubts = new ArrayList<>(closure.doubtful());
			for (SurveyProblem problem : survey.problems()) {
				SurveyRow row = rows.get(problem.row());
				boolean isHere = row != null && room.getName().equals(row.cell(SurveyColumn.ROOM));
				boolean isNew = doubts.stream().noneMatch(doubt -> problem.message().endsWith(doubt.message()));
				if (problem.severity() == Severity.WARNING && isHere && isNew) {
					String message = "row " + problem.row() + ", column " + problem.column() + ": " + problem.message(); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
					doubts.add(new Doubt(row.cell(SurveyColumn.WALL), row.cell(SurveyColumn.NAME), message, false));
				}
			}
			rooms.add(closure.withDoubts(doubts));
		}
		return new SurveyReport(rooms);
	}
}
