// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing.export;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
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

class RegisteredExportersTest {

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

	private final List<IStatus> log = new ArrayList<>();

	private ExporterCatalogue read(String more) throws Exception {
		Object token = new Object();
		IExtensionRegistry registry = RegistryFactory.createRegistry(new PlainStrategy(), token, token);
		String own = Files.readString(Path.of("plugin.xml"));
		add(registry, token, "wainscribe.drawing", own);
		if (!more.isEmpty()) {
			add(registry, token, "other", "<plugin><extension point=\"" + RegisteredExporters.EXTENSION_POINT + "\">" + more
					+ "</extension></plugin>");
		}
		return new RegisteredExporters(registry, log::add).catalogue();
	}

	private static void add(IExtensionRegistry registry, Object token, String contributor, String xml) {
		assertTrue(registry.addContribution(new ByteArrayInputStream(xml.getBytes(StandardCharsets.UTF_8)),
				ContributorFactorySimple.createContributor(contributor), false, contributor, null, token));
	}

	@Test
	void ownPluginFileNamesTheBuiltInOnes() throws Exception {
		List<String> ids = read("").all().stream().map(ElevationExporter::id).toList();
		assertEquals(ExporterCatalogue.builtIn().all().stream().map(ElevationExporter::id).toList(), ids);
		assertEquals(List.of("svg", "dxf", "pdf", "png"), ids);
		assertTrue(log.isEmpty());
	}

	@Test
	void aBrokenContributorIsReportedAndTheOthersStay() throws Exception {
		ExporterCatalogue catalogue = read("<exporter class=\"no.such.Exporter\"/><exporter class=\"java.lang.Object\"/>"
				+ "<exporter class=\"wainscribe.drawing.svg.SvgExporter\"/>");
		assertEquals(4, catalogue.all().size());
		assertEquals(3, log.size());
		assertTrue(log.stream().allMatch(status -> status.getMessage().contains("contributor other")));
	}
}
