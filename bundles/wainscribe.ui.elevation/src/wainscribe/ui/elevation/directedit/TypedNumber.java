// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.directedit;

import java.util.Objects;
import java.util.function.Function;

import wainscribe.commands.EditCommand;
import wainscribe.model.length.Length;

/**
 * A number of the drawing that can be typed.
 *
 * @param label  what it is, in a word or two
 * @param now    what it is now, null when nothing was decided
 * @param change makes the step for another value
 */
public record TypedNumber(String label, Length now, Function<Length, EditCommand> change) {

	/** Refuses nulls, {@code now} apart. */
	public TypedNumber {
		Objects.requireNonNull(label);
		Objects.requireNonNull(change);
	}
}
