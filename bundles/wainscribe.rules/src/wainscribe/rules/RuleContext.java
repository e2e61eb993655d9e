// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules;

import java.math.BigDecimal;
import java.util.List;

import wainscribe.layout.RoomDesign;
import wainscribe.layout.RoomLayout;
import wainscribe.model.Home;
import wainscribe.model.Room;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;

/**
 * All that a check may know, and where it reports to. Not to be implemented by contributors.
 *
 * @see RuleCheck
 */
public interface RuleContext {

	/** Returns the room with its decisions and its derived layout. */
	RoomDesign design();

	/** Returns the home of the room. */
	default Home home() {
		return design().home();
	}

	/** Returns the room. */
	default Room room() {
		return design().room();
	}

	/** Returns the derived layout. */
	default RoomLayout layout() {
		return design().layout();
	}

	/** Returns the walls in walking order. */
	default List<Wall> walls() {
		return room().getWalls();
	}

	/**
	 * Returns an option of the rule as a length: the user's, else the default for the home's unit.
	 *
	 * @throws IllegalArgumentException if the rule has no such option or it is no length
	 */
	Length length(String option);

	/**
	 * Returns an option of the rule as a number.
	 *
	 * @throws IllegalArgumentException if the rule has no such option or it is no number
	 */
	BigDecimal number(String option);

	/** Returns the severity the rule has by its data. */
	Severity severity();

	/**
	 * Writes a message.
	 *
	 * @param pattern text with {@code {0}}, {@code {1}} ... in the place of figures
	 * @param figures lengths are shown in the home's unit, all else as text
	 */
	String say(String pattern, Object... figures);

	/** Reports that the rule is broken, with the rule's own severity. */
	default void report(Subject subject, String pattern, Object... figures) {
		report(severity(), subject, pattern, figures);
	}

	/** Reports that the rule is broken, with another severity: a warning where an error is near. */
	void report(Severity severity, Subject subject, String pattern, Object... figures);

	/** Reports that a fact is missing; the message asks for it and says what it is needed for. */
	void ask(Subject subject, String pattern, Object... figures);

	/**
	 * Gives way to a cancel; long checks call it now and then.
	 *
	 * @throws org.eclipse.core.runtime.OperationCanceledException if the user cancelled
	 */
	void stopIfCancelled();
}
