// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey.form;

import java.util.List;

import wainscribe.model.Room;
import wainscribe.model.Wall;
import wainscribe.model.length.LengthUnit;

/** The name of a wall of the room; in a row of the whole home any name. */
enum WallNameForm implements ValueForm {

	/** The only one. */
	WALL_NAME;

	private static final int MOST_LISTED = 12;

	@Override
	public String read(String text, ReadingContext context) throws ValueException {
		String name = NoteText.plain(text);
		if (context.room() != null && context.room().getWalls().stream().noneMatch(wall -> name.equals(wall.getName()))) {
			throw new ValueException(expected(context.room()));
		}
		return name;
	}

	/** Says which walls there are. */
	static String expected(Room room) {
		List<String> names = room.getWalls().stream().map(Wall::getName).limit(MOST_LISTED).toList();
		if (names.isEmpty()) {
			return "expected a wall of this room, which has none"; //$NON-NLS-1$
		}
		String more = room.getWalls().size() > MOST_LISTED ? " ..." : ""; //$NON-NLS-1$ //$NON-NLS-2$
		return "expected a wall of this room: " + Words.either(names) + more; //$NON-NLS-1$
	}

	@Override
	public String write(Object value, LengthUnit units) {
		return NoteText.escaped((String) value);
	}
}
