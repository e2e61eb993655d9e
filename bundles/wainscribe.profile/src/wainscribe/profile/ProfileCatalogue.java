// SPDX-License-Identifier: EPL-2.0
package wainscribe.profile;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import wainscribe.model.ProfileUse;

/** The profiles that can be chosen, each id once. Immutable. */
public final class ProfileCatalogue {

	private final Map<String, TrimProfile> byId;

	/**
	 * Creates a catalogue.
	 *
	 * @param profiles in the order shown; of two with one id the first stays
	 */
	public ProfileCatalogue(List<? extends TrimProfile> profiles) {
		Map<String, TrimProfile> map = new LinkedHashMap<>();
		profiles.forEach(profile -> map.putIfAbsent(profile.id(), profile));
		byId = map;
	}

	/** Finds a profile by its id. */
	public Optional<TrimProfile> find(String id) {
		return Optional.ofNullable(byId.get(id));
	}

	/** Returns all profiles in their order. */
	public List<TrimProfile> all() {
		return new ArrayList<>(byId.values());
	}

	/** Returns the profiles meant for a use. */
	public List<TrimProfile> forUse(ProfileUse use) {
		return byId.values().stream().filter(profile -> profile.uses().contains(use)).toList();
	}
}
