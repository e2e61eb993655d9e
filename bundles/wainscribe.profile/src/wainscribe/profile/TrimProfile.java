// SPDX-License-Identifier: EPL-2.0
package wainscribe.profile;

import java.util.Set;

import wainscribe.model.ProfileUse;
import wainscribe.model.length.Length;

/**
 * The cross-section of a moulding, as it can be chosen in a brief.
 * <p>
 * Contributed through the extension point {@code wainscribe.profile.profiles}; see {@link ProfileSource}.
 */
public interface TrimProfile {

	/** Returns the id that briefs, prices and cut lists refer to; unique in a catalogue, never shown first. */
	String id();

	/** Returns the name shown, in trade words. */
	String name();

	/** Returns what the profile is meant for; never empty. */
	Set<ProfileUse> uses();

	/** Returns the width of the face on the wall, square to the length. */
	Length face();

	/** Returns the greatest projection from the wall. */
	Length thickness();

	/** Returns the closed section. */
	ProfileSection section();

	/** Returns the developed length of the exposed face in millimetres: what takes paint. */
	double girthMillimetres();
}
