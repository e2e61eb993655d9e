// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey.form;

import java.util.List;

import org.eclipse.osgi.util.NLS;

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
			return Messages.WallNameForm_NoWalls;
		}
		String more = room.getWalls().size() > MOST_LISTED ? " ..." : ""; //$NON-NLS-1$ //$NON-NLS-2$
		return NLS.bind(Messages.WallNameForm_Walls, Words.either(names), more);
	}

	@Override
	public String write(Object value, LengthUnit units) {
		return NoteText.escaped((String) value);
	}
}
