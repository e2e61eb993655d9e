// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.PropertyResourceBundle;

import org.eclipse.core.runtime.ContributorFactorySimple;
import org.eclipse.core.runtime.IExtensionRegistry;
import org.eclipse.core.runtime.RegistryFactory;
import org.eclipse.core.runtime.spi.RegistryStrategy;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import wainscribe.layout.RoomDesign;
import wainscribe.model.BoxType;

class RuleCatalogueTest {

	@TempDir
	Path folder;

	private List<RuleDescriptor> read(String rules) throws IOException {
		Files.createDirectories(folder.resolve("OSGI-INF/l10n"));
		Files.writeString(folder.resolve("OSGI-INF/l10n/bundle.properties"), "n=Name\n");
		Files.writeString(folder.resolve("plugin.xml"),
				"<plugin><extension point=\"wainscribe.rules.rules\">" + rules + "</extension></plugin>");
		return RuleCatalogue.of(folder, getClass().getClassLoader());
	}

	private static String rule(String id, String severity, String check) {
		return "<rule id=\"" + id + "\" area=\"layout\" severity=\"" + severity
				+ "\" name=\"%n\" statement=\"%n\" source=\"%n\" status=\"verified\" reads=\"Box\" class=\"" + check + "\"/>";
	}

	@Test
	void textsComeFromTheKeys() throws IOException {
		RuleDescriptor rule = read(rule("one", "advice", "wainscribe.rules.layout.PlateTooNearCheck")).getFirst();
		assertEquals("Name", rule.name());
		assertEquals(folder.getFileName().toString(), rule.contributor());
	}

	@Test
	void faultyContributionReportsItselfAndSparesTheOthers() throws IOException {
		List<RuleDescriptor> rules = read(rule("one", "dire", "wainscribe.rules.layout.PlateTooNearCheck")
				+ rule("two", "advice", "wainscribe.rules.layout.NoSuchCheck")
				+ rule("three", "advice", "java.lang.String") + rule("four", "advice",
						"wainscribe.rules.layout.RailAtMidHeightCheck"));
		List<Finding> found = new RuleEngine(rules).check(new Site().design());
		assertEquals(4, found.size(), found::toString);
		assertTrue(found.get(0).message().contains("dire"), found.get(0).message());
		assertTrue(found.get(1).message().contains("NoSuchCheck"), found.get(1).message());
		assertTrue(found.get(2).message().contains("java.lang.String"), found.get(2).message());
		assertTrue(found.get(3).message().contains("least"), "a check that asks for an option it has not: " + found.get(3));
	}

	@Test
	void firstOfTwoRulesWithOneIdStays() throws IOException {
		List<RuleDescriptor> rules = read(rule("one", "advice", "wainscribe.rules.layout.PlateTooNearCheck")
				+ rule("one", "error", "wainscribe.rules.layout.PlateTooNearCheck"));
		assertEquals(List.of(Severity.ADVICE), rules.stream().map(RuleDescriptor::severity).toList());
	}

	@Test
	void documentTypeIsRefused() throws IOException {
		read("");
		Files.writeString(folder.resolve("plugin.xml"), "<!DOCTYPE plugin [<!ENTITY a \"b\">]><plugin>&a;</plugin>");
		assertThrows(IOException.class, () -> RuleCatalogue.of(folder, getClass().getClassLoader()));
	}

	@Test
	void registryGivesTheSameRules() throws Exception {
		Object master = new Object();
		IExtensionRegistry registry = RegistryFactory.createRegistry(new RegistryStrategy(null, null), master, new Object());
		try (InputStream plugin = Files.newInputStream(Path.of("plugin.xml"));
				Reader texts = Files.newBufferedReader(Path.of("OSGI-INF/l10n/bundle.properties"), StandardCharsets.UTF_8)) {
			registry.addContribution(plugin, ContributorFactorySimple.createContributor("wainscribe.rules"), false, null,
					new PropertyResourceBundle(texts), master);
		}
		List<RuleDescriptor> rules = RuleCatalogue.of(registry);
		assertEquals(facts(Site.ENGINE.rules()), facts(rules));
		RoomDesign design = brokenRoom();
		assertEquals(Site.ENGINE.check(design), new RuleEngine(rules).check(design));
		registry.stop(master);
	}

	private static RoomDesign brokenRoom() {
		Site site = new Site();
		site.box("A", BoxType.SWITCH, "P1", 1000, 850);
		return site.design();
	}

	private static List<List<Object>> facts(List<RuleDescriptor> rules) {
		return rules.stream().map(rule -> List.<Object>of(rule.id(), rule.area(), rule.severity(), rule.name(),
				rule.statement(), rule.source(), rule.status(), rule.profiles(), rule.options(), rule.reads())).toList();
	}
}
