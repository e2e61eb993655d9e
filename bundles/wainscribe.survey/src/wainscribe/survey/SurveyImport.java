// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey;

import java.util.List;

import wainscribe.model.Home;
import wainscribe.model.Room;

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
	 */
	public Result into(Survey survey, Home home, List<Room> rooms) {
		throw new UnsupportedOperationException();
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
