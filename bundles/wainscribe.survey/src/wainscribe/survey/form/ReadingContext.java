// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey.form;

import java.util.Set;

import wainscribe.model.Room;
import wainscribe.model.length.LengthUnit;

/** What the reading of a value depends on besides its text. */
public interface ReadingContext {

	/** Returns the unit of bare numbers, null if the file names none. */
	LengthUnit units();

	/** Returns the ids a brief may name as its pattern. */
	Set<String> patterns();

	/** Returns the room of the row being read, null for a row of the whole home. */
	Room room();

	/**
	 * Takes a remark on the value being read, which is kept.
	 *
	 * @param message what to look at, without the text of the value
	 */
	void remark(String message);
}
