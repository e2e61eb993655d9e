// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey;

import java.util.List;

import wainscribe.model.Home;
import wainscribe.model.Room;
import wainscribe.survey.merge.HomeMerge;

/**
 * Brings a survey into a home.
 * <p>
 * Rooms, walls and elements are matched by name and keep their ids and what a survey does not carry. Rooms that are not in
 * the survey stay untouched.
 */
public final class SurveyImport {

	/**
	 * Updates a home in place.
	 *
	 * @param survey one without errors; its own objects are used up
	 * @param home   the home to update
	 * @param rooms  the rooms the home has now; updated in place
	 * @return all rooms, those the home had first in their order, and what changed
	 * @throws IllegalArgumentException if the survey has errors
	 */
	public Result into(Survey survey, Home home, List<Room> rooms) {
		if (survey.firstError().isPresent()) {
			throw new IllegalArgumentException(survey.firstError().get().inFile(survey.file()));
		}
		HomeMerge merge = new HomeMerge(rooms);
		merge.takeHome(home, survey.home(), survey.units());
		survey.rooms().forEach(merge::takeRoom);
		return new Result(merge.rooms(), merge.touched(), merge.changes());
	}

	/**
	 * What came out of an import.
	 *
	 * @param rooms   all rooms of the home
	 * @param touched the rooms the survey had, in its order
	 * @param changes what changed, empty if nothing
	 */
	public record Result(List<Room> rooms, List<Room> touched, List<SurveyChange> changes) {

		/** Copies the lists. */
		public Result {
			rooms = List.copyOf(rooms);
			touched = List.copyOf(touched);
			changes = List.copyOf(changes);
		}
	}
}
