// SPDX-License-Identifier: EPL-2.0
package wainscribe.profile.section;

import java.util.Objects;
import java.util.Optional;

/**
 * Something wrong with a section.
 *
 * @param sentence what is wrong, in plain words, naming the point in millimetres
 * @param spot     where it is wrong; null where that is the section as a whole
 */
public record SectionFault(String sentence, Spot spot) {

	/** Refuses a fault without words. */
	public SectionFault {
		Objects.requireNonNull(sentence);
	}

	/** Returns where it is wrong; empty where that is the section as a whole. */
	public Optional<Spot> where() {
		return Optional.ofNullable(spot);
	}
}
