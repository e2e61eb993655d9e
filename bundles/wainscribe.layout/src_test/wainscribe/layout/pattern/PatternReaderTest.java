// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.pattern;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Properties;

import org.eclipse.core.runtime.ContributorFactorySimple;
import org.eclipse.core.runtime.IExtensionRegistry;
import org.eclipse.core.runtime.RegistryFactory;
import org.eclipse.core.runtime.spi.RegistryStrategy;
import org.junit.jupiter.api.Test;

/** Reads catalogues from a registry of its own, without a running platform. */
class PatternReaderTest {

	private final Object token = new Object();
	private final IExtensionRegistry registry = RegistryFactory.createRegistry(new RegistryStrategy(null, null), token, token);

	private void add(String contributor, String xml) {
		registry.addContribution(new ByteArrayInputStream(xml.getBytes(StandardCharsets.UTF_8)),
				ContributorFactorySimple.createContributor(contributor), false, contributor, null, token);
	}

	private void addOwn() throws Exception {
		add("wainscribe.layout", Files.readString(Path.of("plugin.xml")));
	}

	private void addPattern(String attributes) {
		add("com.example.trim", "<plugin><extension point='wainscribe.layout.patterns'><pattern " + attributes + "/></extension></plugin>");
	}

	private PatternCatalogue read() {
		return new PatternReader(registry).read();
	}

	@Test
	void theBuiltInPatternsComeThroughTheExtensionPoint() throws Exception {
		addOwn();
		assertEquals(BuiltInPatterns.catalogue().ids(), read().ids());
		for (PatternDescriptor builtIn : BuiltInPatterns.catalogue().all()) {
			assertEquals(builtIn.pattern().getClass(), read().find(builtIn.id()).orElseThrow().pattern().getClass());
		}
	}

	@Test
	void namesAreTheSameWithAndWithoutTheRegistry() throws Exception {
		Properties names = new Properties();
		names.load(new StringReader(Files.readString(Path.of("OSGI-INF/l10n/bundle.properties"))));
		addOwn();
		for (PatternDescriptor contributed : read().all()) {
			PatternDescriptor builtIn = BuiltInPatterns.catalogue().find(contributed.id()).orElseThrow();
			assertEquals(builtIn.name(), names.getProperty(contributed.name().substring(1)));
			assertEquals(builtIn.description(), names.getProperty(contributed.description().substring(1)));
		}
	}

	@Test
	void anotherContributorAddsItsPatternAfterTheSuitesOwn() throws Exception {
		addPattern("id='stripes' name='Stripes' class='" + RailAndBase.class.getName() + "'");
		addOwn();
		PatternCatalogue catalogue = read();
		assertEquals("stripes", catalogue.ids().get(catalogue.ids().size() - 1));
		assertEquals("", catalogue.find("stripes").orElseThrow().description());
		assertInstanceOf(RailAndBase.class, catalogue.find("stripes").orElseThrow().pattern());
	}

	@Test
	void aClassIsCreatedLateAndAFailureNamesPointAndContributor() throws Exception {
		addOwn();
		addPattern("id='broken' name='Broken' class='com.example.trim.Nowhere'");
		addPattern("id='wrong' name='Wrong' class='java.lang.Object'");
		PatternCatalogue catalogue = read();
		for (String id : List.of("broken", "wrong")) {
			PatternDescriptor pattern = catalogue.find(id).orElseThrow();
			PatternException failure = assertThrows(PatternException.class, pattern::pattern);
			assertTrue(failure.getMessage().startsWith("wainscribe.layout.patterns, contributor com.example.trim, pattern " + id + ": "),
					failure.getMessage());
		}
	}

	@Test
	void anIncompleteContributionIsLeftOutAndOfTwoWithOneIdTheSuitesOwnStays() throws Exception {
		addPattern("id='nameless' class='" + RailAndBase.class.getName() + "'");
		addPattern("id='none' name='Mine' class='" + RailAndBase.class.getName() + "'");
		addOwn();
		assertEquals(BuiltInPatterns.catalogue().ids(), read().ids());
		assertInstanceOf(NoTreatment.class, read().find("none").orElseThrow().pattern());
	}
}
