// SPDX-License-Identifier: EPL-2.0
package wainscribe.finishes.colour.list;

import java.util.List;
import java.util.Objects;

/**
 * Colours read from a file.
 *
 * @param name name of the file
 * @param colours what could be read, in the order of the file
 * @param refused a line for each row that could not: file, row, column and what was expected
 */
public record ColourList(String name, List<NamedColour> colours, List<String> refused) {

	/** Copies the lists. */
	public ColourList {
		Objects.requireNonNull(name);
		colours = List.copyOf(colours);
		refused = List.copyOf(refused);
	}
}
