// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** The columns of a survey file. The header row names them, in any order. */
public enum SurveyColumn {

	/** What the row records. */
	KIND,
	/** Name of a room. */
	ROOM,
	/** Name of a wall. */
	WALL,
	/** Name of the thing recorded. */
	NAME,
	/** From the wall's left end. */
	X,
	/** From the floor line. */
	Y,
	/** Width or length. */
	WIDTH,
	/** Height. */
	HEIGHT,
	/** Projection, depth in the wall, or the diagonal of a corner. */
	DEPTH,
	/** Inside angle to the next wall, in degrees. */
	ANGLE,
	/** {@code key=value;key=value}. */
	NOTE;

	/** Returns the name as the header row has it. */
	public String title() {
		return name().toLowerCase(Locale.ROOT);
	}

	/** Finds a column by what a header cell says, whatever the case and the spaces round it. */
	public static Optional<SurveyColumn> ofTitle(String cell) {
		String title = cell.strip().toLowerCase(Locale.ROOT);
		return Arrays.stream(values()).filter(column -> column.title().equals(title)).findFirst();
	}

	/** Returns the header row as it is written. */
	public static String header() {
		return Arrays.stream(values()).map(SurveyColumn::title).collect(Collectors.joining(",")); //$NON-NLS-1$
	}
}
