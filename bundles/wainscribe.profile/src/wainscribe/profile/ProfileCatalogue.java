// SPDX-License-Identifier: EPL-2.0
package wainscribe.profile;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.eclipse.osgi.util.NLS;

import wainscribe.model.ProfileUse;
import wainscribe.profile.shape.ProfileShape;
import wainscribe.profile.shape.ShapeRequest;

/**
 * The profiles that can be chosen, each id once, and the shapes that are drawn to any size when they are asked for by an id
 * such as {@code ogee-40x15} ({@link ShapeRequest}). Immutable.
 */
public final class ProfileCatalogue {

	private final Map<String, TrimProfile> byId = new LinkedHashMap<>();
	private final Map<String, ProfileShape> shapes = new LinkedHashMap<>();

	/**
	 * Creates a catalogue without shapes.
	 *
	 * @param profiles in the order shown; of two with one id the first stays
	 */
	public ProfileCatalogue(List<TrimProfile> profiles) {
		this(profiles, List.of());
	}

	/**
	 * Creates a catalogue.
	 *
	 * @param profiles in the order shown; of two with one id the first stays
	 * @param shapes   in the order shown; of two with one id the first stays
	 */
	public ProfileCatalogue(List<TrimProfile> profiles, List<? extends ProfileShape> shapes) {
		profiles.forEach(profile -> byId.putIfAbsent(profile.id(), profile));
		shapes.forEach(shape -> this.shapes.putIfAbsent(shape.id(), shape));
	}

	/** Returns the catalogue with more profiles before its own; of two with one id the added one stays. */
	public ProfileCatalogue with(List<TrimProfile> more) {
		List<TrimProfile> all = new ArrayList<>(more);
		all.addAll(byId.values());
		return new ProfileCatalogue(all, shapes());
	}

	/** Finds a profile by its id, or draws the shape that the id asks for. */
	public Optional<TrimProfile> find(String id) {
		return Optional.ofNullable(byId.get(id)).or(() -> requested(id).flatMap(request -> request.draw(shape(request)).profile()));
	}

	/**
	 * Tells why no profile is found.
	 *
	 * @return one sentence, such as the limits of a shape; empty if {@link #find} finds one
	 */
	public Optional<String> fault(String id) {
		if (byId.containsKey(id)) {
			return Optional.empty();
		}
		return requested(id).map(request -> request.draw(shape(request)).fault())
				.orElseGet(() -> Optional.of(NLS.bind(Messages.ProfileCatalogue_Unknown, id)));
	}

	private Optional<ShapeRequest> requested(String id) {
		return ShapeRequest.parse(id).filter(request -> shapes.containsKey(request.shape()));
	}

	private ProfileShape shape(ShapeRequest request) {
		return shapes.get(request.shape());
	}

	/** Returns all profiles of a fixed size in their order. */
	public List<TrimProfile> all() {
		return new ArrayList<>(byId.values());
	}

	/** Returns the shapes that can be drawn to any size, in their order. */
	public List<ProfileShape> shapes() {
		return new ArrayList<>(shapes.values());
	}

	/** Returns the profiles of a fixed size that are meant for a use. */
	public List<TrimProfile> forUse(ProfileUse use) {
		return byId.values().stream().filter(profile -> profile.uses().contains(use)).toList();
	}
}
