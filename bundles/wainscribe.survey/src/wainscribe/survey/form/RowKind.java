// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey.form;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** What a row records; in the order in which rows are taken in, so that what a row refers to is there. */
public enum RowKind {

	/** The home itself. */
	HOME,
	/** A room. */
	ROOM,
	/** A wall of a room. */
	WALL,
	/** A distance across the floor. */
	DIAGONAL,
	/** A corner measured by a triangle. */
	CORNER,
	/** A door. */
	DOOR,
	/** A window. */
	WINDOW,
	/** An electrical box. */
	BOX,
	/** Something fixed to or standing at a wall. */
	FIXTURE,
	/** An existing moulding. */
	TRIM,
	/** A stud in the wall. */
	STUD,
	/** A pipe in the wall. */
	PIPE,
	/** A cable in the wall. */
	CABLE,
	/** An existing coating. */
	FINISH,
	/** Decisions for a room or the home. */
	BRIEF,
	/** A coating decided on. */
	PAINT,
	/** A panel frame placed by hand. */
	FRAME;

	/** Returns the word in the file. */
	public String word() {
		return name().toLowerCase(Locale.ROOT);
	}

	/** Tells whether it records something with an outline on a wall. */
	public boolean isPlaced() {
		return switch (this) {
			case DOOR, WINDOW, BOX, FIXTURE, TRIM, STUD, PIPE, CABLE, FRAME -> true;
			default -> false;
		};
	}

	/** Finds a kind by its word, whatever the case. */
	public static Optional<RowKind> ofWord(String word) {
		return Arrays.stream(values()).filter(kind -> kind.word().equalsIgnoreCase(word)).findFirst();
	}

	/** Returns all words, for a message. */
	public static String words() {
		return Words.either(Arrays.stream(values()).map(RowKind::word).collect(Collectors.toList()));
	}
}
