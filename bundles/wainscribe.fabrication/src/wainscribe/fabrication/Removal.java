// SPDX-License-Identifier: EPL-2.0
package wainscribe.fabrication;

import java.util.Objects;

import wainscribe.model.TrimType;
import wainscribe.model.length.Length;

/**
 * Existing moulding that has to come off before the new goes on.
 *
 * @param wall   name of its wall
 * @param type   what it is
 * @param name   its name on the survey, empty if it has none
 * @param length along the wall
 */
public record Removal(String wall, TrimType type, String name, Length length) {

	/** Refuses nulls. */
	public Removal {
		Objects.requireNonNull(wall);
		Objects.requireNonNull(type);
		Objects.requireNonNull(name);
		Objects.requireNonNull(length);
	}
}
