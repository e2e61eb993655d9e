// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey;

import java.util.List;

import wainscribe.model.Home;
import wainscribe.model.Room;

/** Writes a home as a survey file that {@link SurveyReader} reads back with every measurement and decision. */
public final class SurveyWriter {

	/**
	 * Writes the rooms of a home.
	 *
	 * @param home  its unit is that of the bare numbers
	 * @param rooms in the order in which they are to stand in the file
	 * @return the text of the file, lines ending in a line feed
	 */
	public String write(Home home, List<Room> rooms) {
		throw new UnsupportedOperationException();
	}
}
