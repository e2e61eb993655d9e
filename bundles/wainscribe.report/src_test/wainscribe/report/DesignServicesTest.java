// SPDX-License-Identifier: EPL-2.0
package wainscribe.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.eclipse.core.runtime.ContributorFactorySimple;
import org.eclipse.core.runtime.IExtensionRegistry;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.RegistryFactory;
import org.eclipse.core.runtime.spi.RegistryContributor;
import org.eclipse.core.runtime.spi.RegistryStrategy;
import org.junit.jupiter.api.Test;

import wainscribe.drawing.export.ElevationExporter;
import wainscribe.layout.pattern.PatternDescriptor;
import wainscribe.profile.TrimProfile;
import wainscribe.rules.RuleDescriptor;

/** What the plugin files contribute and what comes without a platform is the same. */
class DesignServicesTest {

	/** Creates classes by name, as a bundle would. */
	private static final class PlainStrategy extends RegistryStrategy {
		PlainStrategy() {
			super(null, null);
		}

		@Override
		public Object createExecutableExtension(RegistryContributor contributor, String className, String overridden) {
			try {
				return Class.forName(className).getConstructor().newInstance();
			} catch (ReflectiveOperationException e) {
				throw new IllegalStateException(e);
			}
		}
	}

	private static IExtensionRegistry registry() throws Exception {
		Object token = new Object();
		IExtensionRegistry registry = RegistryFactory.createRegistry(new PlainStrategy(), token, token);
		for (String bundle : List.of("wainscribe.profile", "wainscribe.layout", "wainscribe.rules", "wainscribe.drawing")) {
			try (InputStream file = Files.newInputStream(Path.of("..", bundle, "plugin.xml"))) {
				assertTrue(registry.addContribution(file, ContributorFactorySimple.createContributor(bundle), false, bundle, null,
						token));
			}
		}
		return registry;
	}

	@Test
	void theRegistryGivesWhatComesWithTheSuite() throws Exception {
		List<IStatus> log = new ArrayList<>();
		DesignServices registered = DesignServices.from(registry(), log::add);
		DesignServices builtIn = DesignServices.builtIn();
		assertEquals(List.of(), log);
		assertEquals(builtIn.profiles().all().stream().map(TrimProfile::id).toList(),
				registered.profiles().all().stream().map(TrimProfile::id).toList());
		assertEquals(builtIn.patterns().all().stream().map(PatternDescriptor::id).toList(),
				registered.patterns().all().stream().map(PatternDescriptor::id).toList());
		assertEquals(builtIn.rules().rules().stream().map(RuleDescriptor::id).toList(),
				registered.rules().rules().stream().map(RuleDescriptor::id).toList());
		assertEquals(builtIn.exporters().all().stream().map(ElevationExporter::id).toList(),
				registered.exporters().all().stream().map(ElevationExporter::id).toList());
		assertFalse(builtIn.rules().rules().isEmpty());
	}
}
