// SPDX-License-Identifier: EPL-2.0
package wainscribe.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Arrows between bundles point down, and the domain reaches no window toolkit, whatever way one goes. */
class BundleLayersTest {

	private static final List<String> WINDOWS = List.of("org.eclipse.swt", "org.eclipse.jface", "org.eclipse.draw2d",
		"org.eclipse.gef", "org.eclipse.ui", "org.eclipse.e4.ui");

	private static Map<String, BundleManifest> known;

	@BeforeAll
	static void readManifests() {
		known = new HashMap<>(TargetBundles.manifests());
		Repository.bundles().forEach(bundle -> known.put(bundle.name(), bundle.manifest()));
	}

	static List<Bundle> domain() {
		return Repository.bundles().stream().filter(Bundle::isDomain).toList();
	}

	static List<Bundle> layered() {
		return Repository.bundles().stream().filter(bundle -> !Layers.standsApart(bundle.name())).toList();
	}

	@Test
	void theWindowToolkitIsFoundFromAWindowedBundle() {
		// guards the search itself: were the platform's manifests not read, the domain test below could not fail
		assertTrue(wayToWindows("wainscribe.app").size() > 1, "no way from wainscribe.app to the window toolkit was found");
		assertTrue(known.get("org.eclipse.ui.ide") != null, "the platform's manifests were not found");
	}

	@ParameterizedTest
	@MethodSource("domain")
	void domainBundleReachesNoWindowToolkit(Bundle bundle) {
		assertEquals(List.of(), wayToWindows(bundle.name()), "way from the domain to a window toolkit");
		assertEquals(List.of(), bundle.manifest().importedPackages().stream().filter(BundleLayersTest::isWindows).toList(),
			"packages imported by " + bundle);
	}

	@ParameterizedTest
	@MethodSource("layered")
	void arrowsPointDown(Bundle bundle) {
		Map<String, Integer> heights = Layers.heights();
		Integer own = heights.get(bundle.name());
		assertTrue(own != null, bundle + " has no layer: give it one in Layers");
		List<String> upwards = bundle.manifest().required().stream().filter(heights::containsKey)
			.filter(name -> heights.get(name) >= own).toList();
		assertEquals(List.of(), upwards, bundle + " needs bundles that do not stand below it");
	}

	/** Follows required bundles until a window toolkit is met; gives the way there, or nothing. */
	private static List<String> wayToWindows(String start) {
		Map<String, String> cameFrom = new HashMap<>();
		Deque<String> open = new ArrayDeque<>(List.of(start));
		cameFrom.put(start, "");
		while (!open.isEmpty()) {
			String name = open.remove();
			if (isWindows(name)) {
				return way(name, cameFrom);
			}
			BundleManifest manifest = known.get(name);
			if (manifest != null) {
				for (String next : manifest.required()) {
					if (cameFrom.putIfAbsent(next, name) == null) {
						open.add(next);
					}
				}
			}
		}
		return List.of();
	}

	private static List<String> way(String end, Map<String, String> cameFrom) {
		List<String> way = new ArrayList<>();
		for (String name = end; !name.isEmpty(); name = cameFrom.get(name)) {
			way.add(0, name);
		}
		return way;
	}

	private static boolean isWindows(String name) {
		return WINDOWS.stream().anyMatch(window -> name.equals(window) || name.startsWith(window + '.'));
	}
}
