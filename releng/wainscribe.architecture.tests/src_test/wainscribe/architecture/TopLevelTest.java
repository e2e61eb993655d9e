// SPDX-License-Identifier: EPL-2.0
package wainscribe.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Set;

import org.junit.jupiter.api.Test;

/** The front door stays tidy. */
class TopLevelTest {

	/** {@code out} and {@code target} are results, which version control ignores. */
	private static final Set<String> ALLOWED = Set.of("pom.xml", "README.md", "DEVELOPERS.md", "LICENSE", "bundles",
		"features", "releng", "out", "target");

	@Test
	void nothingElseLiesAtTheTop() {
		List<String> strangers = Repository.children(Repository.ROOT).stream().map(path -> path.getFileName().toString())
			.filter(name -> !name.startsWith(".") && !ALLOWED.contains(name)).toList();
		assertEquals(List.of(), strangers);
	}
}
