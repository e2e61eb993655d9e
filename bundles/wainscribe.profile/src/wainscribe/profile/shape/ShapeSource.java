// SPDX-License-Identifier: EPL-2.0
package wainscribe.profile.shape;

import java.util.List;

/** Brings shapes to the catalogue; named in extensions of {@code wainscribe.profile.profiles}. */
public interface ShapeSource {

	/**
	 * Returns the shapes, in the order in which they are to be shown.
	 *
	 * @return at least one shape; called once each time a catalogue is read
	 */
	List<ProfileShape> shapes();
}
