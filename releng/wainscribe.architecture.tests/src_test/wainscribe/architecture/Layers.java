// SPDX-License-Identifier: EPL-2.0
package wainscribe.architecture;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Which bundle stands above which. A bundle may need only bundles of a lower layer. */
final class Layers {

	/** From the ground up. Bundles of one layer do not know each other. */
	private static final List<List<String>> GROUND_UP = List.of(
		List.of("wainscribe.model"),
		List.of("wainscribe.profile", "wainscribe.survey", "wainscribe.cutting", "wainscribe.finishes"),
		List.of("wainscribe.layout"),
		List.of("wainscribe.fabrication"),
		List.of("wainscribe.takeoff", "wainscribe.rules", "wainscribe.drawing", "wainscribe.commands"),
		List.of("wainscribe.report"),
		List.of("wainscribe.cli", "wainscribe.ui", "wainscribe.ui.drafting", "wainscribe.examples"),
		List.of("wainscribe.ui.elevation", "wainscribe.ui.cutting", "wainscribe.ui.profile"),
		List.of("wainscribe.app"),
		List.of("wainscribe.ui.tests"));

	/** Fragments of foreign bundles, which stand apart. */
	private static final List<String> APART = List.of("wainscribe.gef.bridge");

	private Layers() {
	}

	/** The layer of each bundle, 0 is the ground. */
	static Map<String, Integer> heights() {
		Map<String, Integer> heights = new TreeMap<>();
		for (int height = 0; height < GROUND_UP.size(); height++) {
			for (String name : GROUND_UP.get(height)) {
				heights.put(name, height);
			}
		}
		return heights;
	}

	static boolean standsApart(String name) {
		return APART.contains(name);
	}
}
