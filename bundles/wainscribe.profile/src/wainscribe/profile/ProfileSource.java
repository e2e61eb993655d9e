// SPDX-License-Identifier: EPL-2.0
package wainscribe.profile;

import java.util.List;

/** Brings profiles to the catalogue; named in extensions of {@code wainscribe.profile.profiles}. */
public interface ProfileSource {

	/**
	 * Returns the profiles, in the order in which they are to be shown.
	 *
	 * @return at least one profile; called once each time a catalogue is read
	 */
	List<TrimProfile> profiles();
}
