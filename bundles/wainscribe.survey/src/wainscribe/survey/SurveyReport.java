// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey;

import java.util.List;

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

	/** Reports on the rooms of a survey; what was doubtful in its rows is added to the room it belongs to. */
	public static SurveyReport of(Survey survey) {
		throw new UnsupportedOperationException();
	}
}
