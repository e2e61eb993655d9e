// SPDX-License-Identifier: EPL-2.0
package wainscribe.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

import org.junit.jupiter.api.Test;

import wainscribe.model.Fixture;
import wainscribe.model.length.Length;
import wainscribe.rules.Finding;
import wainscribe.rules.FindingKind;
import wainscribe.rules.RuleCatalogue;
import wainscribe.rules.RuleEngine;
import wainscribe.rules.Severity;

/** Runs the rule as it stands in this bundle's plugin.xml. */
class ArtOnMouldingCheckTest {

	private final ExampleRoom room = new ExampleRoom();

	private List<Finding> findings() throws IOException {
		return new RuleEngine(RuleCatalogue.of(Path.of(""), getClass().getClassLoader())).check(room.design());
	}

	@Test
	void pictureOnTheRailIsTheOneFinding() throws IOException {
		Fixture map = room.art(1000, 700);
		List<Finding> found = findings();
		assertEquals(List.of(map), found.stream().map(Finding::object).toList());
		Finding finding = found.getFirst();
		assertEquals(FindingKind.BROKEN, finding.kind());
		assertEquals(Severity.ADVICE, finding.severity());
		assertEquals("example-art-clear", finding.rule());
		assertEquals("Map", finding.element());
		assertEquals("Common practice", finding.source());
		assertTrue(finding.message().contains("50 mm"), finding.message());
	}

	@Test
	void pictureJustNearerThanWantedIsFound() throws IOException {
		room.art(1000, 0).setY(Length.ofMillimetres(840 - 300 - 49));
		assertEquals(1, findings().size());
	}

	@Test
	void pictureAtTheDistanceIsFine() throws IOException {
		Fixture map = room.art(1000, 0);
		map.setY(room.design().layout().rail().orElseThrow().bottom().minus(Length.ofMillimetres(350)));
		assertEquals(List.of(), findings());
	}
}
