// SPDX-License-Identifier: EPL-2.0
package wainscribe.finishes.colour.list;

import java.util.Objects;

import wainscribe.finishes.colour.SurfaceColour;

/**
 * A colour of a list the user brought.
 *
 * @param name its name there
 * @param code its code there, empty where it has none
 * @param colour its colour
 */
public record NamedColour(String name, String code, SurfaceColour colour) {

	/** Refuses nulls. */
	public NamedColour {
		Objects.requireNonNull(name);
		Objects.requireNonNull(code);
		Objects.requireNonNull(colour);
	}
}
