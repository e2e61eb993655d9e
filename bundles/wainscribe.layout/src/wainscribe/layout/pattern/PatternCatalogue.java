// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.pattern;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The patterns that can be chosen, each id once. Immutable. */
public final class PatternCatalogue {

	private final Map<String, PatternDescriptor> byId;

	/**
	 * Creates a catalogue.
	 *
	 * @param patterns in the order shown; of two with one id the first stays
	 */
	public PatternCatalogue(List<? extends PatternDescriptor> patterns) {
		Map<String, PatternDescriptor> map = new LinkedHashMap<>();
		patterns.forEach(pattern -> map.putIfAbsent(pattern.id(), pattern));
		byId = map;
	}

	/** Finds a pattern by its id. */
	public Optional<PatternDescriptor> find(String id) {
		return Optional.ofNullable(byId.get(id));
	}

	/** Returns the ids of all patterns in their order. */
	public List<String> ids() {
		return List.copyOf(byId.keySet());
	}

	/** Returns all patterns in their order. */
	public List<PatternDescriptor> all() {
		return List.copyOf(byId.values());
	}
}
