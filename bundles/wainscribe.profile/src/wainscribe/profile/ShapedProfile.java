// SPDX-License-Identifier: EPL-2.0
package wainscribe.profile;

import java.util.Objects;
import java.util.Set;

import wainscribe.model.ProfileUse;
import wainscribe.model.length.Length;

/**
 * A profile whose section is known as lines and arcs; its girth follows from them.
 *
 * @param id        unique in a catalogue
 * @param name      shown, in trade words
 * @param uses      what it is meant for; at least one
 * @param face      width on the wall
 * @param thickness greatest projection
 * @param section   the closed section
 */
public record ShapedProfile(String id, String name, Set<ProfileUse> uses, Length face, Length thickness,
		ProfileSection section) implements TrimProfile {

	/** Copies the uses; refuses nulls, an empty id and a profile without a use. */
	public ShapedProfile {
		Objects.requireNonNull(name);
		Objects.requireNonNull(face);
		Objects.requireNonNull(thickness);
		Objects.requireNonNull(section);
		uses = Set.copyOf(uses);
		if (id.isBlank() || uses.isEmpty()) {
			throw new IllegalArgumentException("a profile needs an id and a use"); //$NON-NLS-1$
		}
	}

	@Override
	public double girthMillimetres() {
		return section.girthMillimetres();
	}
}
