// SPDX-License-Identifier: EPL-2.0
package wainscribe.report;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import wainscribe.rules.RuleCatalogue;
import wainscribe.rules.RuleDescriptor;

/** Finds the rules that come with the suite where no platform reads them: beside the classes of their bundle. */
final class BuiltInRules {

	private static final String PLUGIN_FILE = "plugin.xml"; //$NON-NLS-1$
	private static final String BUNDLE = "wainscribe.rules"; //$NON-NLS-1$

	private BuiltInRules() {
	}

	static List<RuleDescriptor> read() {
		ClassLoader loader = RuleCatalogue.class.getClassLoader();
		try {
			Path classes = Path.of(RuleCatalogue.class.getProtectionDomain().getCodeSource().getLocation().toURI());
			if (Files.isRegularFile(classes)) {
				try (FileSystem jar = FileSystems.newFileSystem(classes)) {
					return RuleCatalogue.of(jar.getPath("/"), loader); //$NON-NLS-1$
				}
			}
			return RuleCatalogue.of(folder(classes), loader);
		} catch (IOException e) {
			throw new UncheckedIOException(e);
		} catch (URISyntaxException e) {
			throw new IllegalStateException(e);
		}
	}

	/** Classes lie in the bundle itself or in target/classes below it; a build that mixes bundles is run from a bundle. */
	private static Path folder(Path classes) throws IOException {
		for (Path at = classes; at != null; at = at.getParent()) {
			if (Files.isRegularFile(at.resolve(PLUGIN_FILE)) && at.getFileName().toString().startsWith(BUNDLE)) {
				return at;
			}
		}
		Path beside = Path.of("").toAbsolutePath().resolveSibling(BUNDLE); //$NON-NLS-1$
		if (Files.isRegularFile(beside.resolve(PLUGIN_FILE))) {
			return beside;
		}
		throw new IOException(BUNDLE + ": " + PLUGIN_FILE + " not found beside " + classes); //$NON-NLS-1$ //$NON-NLS-2$
	}
}
