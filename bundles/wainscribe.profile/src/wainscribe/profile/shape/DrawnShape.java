// SPDX-License-Identifier: EPL-2.0
package wainscribe.profile.shape;

import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

import wainscribe.model.ProfileUse;
import wainscribe.profile.section.ProfileSection;

/**
 * A shape given by its parts.
 *
 * @param id      first word of the ids of its profiles
 * @param name    shown, in trade words
 * @param uses    what it is meant for; at least one
 * @param usual   a size in which it is often made
 * @param number  its further number; null if it has none
 * @param drawing draws the section for a size
 */
public record DrawnShape(String id, String name, Set<ProfileUse> uses, ShapeSize usual, ShapeParameter number,
		Function<ShapeSize, ProfileSection> drawing) implements ProfileShape {

	/** Copies the uses; refuses nulls, an id that no request could name, and a shape without a use. */
	public DrawnShape {
		Objects.requireNonNull(name);
		Objects.requireNonNull(usual);
		Objects.requireNonNull(drawing);
		uses = Set.copyOf(uses);
		if (!id.matches("[a-z0-9]+(-[a-z0-9]+)*") || uses.isEmpty()) { //$NON-NLS-1$
			throw new IllegalArgumentException("a shape needs an id of lower case words and a use"); //$NON-NLS-1$
		}
	}

	@Override
	public Optional<ShapeParameter> parameter() {
		return Optional.ofNullable(number);
	}

	@Override
	public ProfileSection section(ShapeSize size) {
		return drawing.apply(size);
	}
}
