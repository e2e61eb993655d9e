// SPDX-License-Identifier: EPL-2.0
package wainscribe.profile.shape;

import java.util.Optional;
import java.util.Set;

import wainscribe.model.ProfileUse;
import wainscribe.profile.section.ProfileSection;

/**
 * A profile computed from its measures: face width, thickness and at most one further number. Contributed through the
 * extension point {@code wainscribe.profile.profiles}; asked for by ids as {@link ShapeRequest} reads them.
 */
public interface ProfileShape {

	/** Returns the first word of the ids of its profiles: lower case letters, digits and single hyphens. */
	String id();

	/** Returns the name shown, in trade words and without a size. */
	String name();

	/** Returns what it is meant for; never empty. */
	Set<ProfileUse> uses();

	/** Returns a size in which it is often made. */
	ShapeSize usual();

	/** Returns its further number; empty if width and thickness say all. */
	Optional<ShapeParameter> parameter();

	/**
	 * Draws the section.
	 *
	 * @param size what is asked for; the further number is within its limits, 0 where the shape has none
	 * @return the section, exactly as wide and thick as asked; what cannot be made shows as a fault of the section
	 */
	ProfileSection section(ShapeSize size);
}
