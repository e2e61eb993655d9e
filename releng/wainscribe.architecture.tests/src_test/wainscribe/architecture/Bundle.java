// SPDX-License-Identifier: EPL-2.0
package wainscribe.architecture;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Properties;
import java.util.stream.Stream;

/**
 * One bundle of the project as it lies in the working copy.
 *
 * @param folder where it lies
 */
record Bundle(Path folder) {

	/** Bundles that draw or open windows; all others are the domain. */
	private static final List<String> WITH_WINDOWS = List.of("wainscribe.ui", "wainscribe.ui.drafting", "wainscribe.ui.elevation",
		"wainscribe.ui.cutting", "wainscribe.ui.profile", "wainscribe.app", "wainscribe.gef.bridge", "wainscribe.ui.tests");

	/** Symbolic name. */
	String name() {
		return manifest().name();
	}

	/** True if it must never reach a window toolkit or the workbench. */
	boolean isDomain() {
		return !WITH_WINDOWS.contains(name());
	}

	BundleManifest manifest() {
		try (InputStream in = Files.newInputStream(folder.resolve("META-INF/MANIFEST.MF"))) {
			return BundleManifest.read(in);
		} catch (IOException e) {
			throw new UncheckedIOException(e);
		}
	}

	/** plugin.xml or fragment.xml, whichever there is. */
	List<Path> descriptors() {
		return Stream.of("plugin.xml", "fragment.xml").map(folder::resolve).filter(Files::exists).toList();
	}

	/** The texts that %keys refer to. */
	Properties texts() {
		String base = manifest().value("Bundle-Localization").orElse("OSGI-INF/l10n/bundle");
		Properties texts = new Properties();
		Path file = folder.resolve(base + ".properties");
		if (Files.exists(file)) {
			try (InputStream in = Files.newInputStream(file)) {
				texts.load(in);
			} catch (IOException e) {
				throw new UncheckedIOException(e);
			}
		}
		return texts;
	}

	/** Compiled classes. */
	Path classes() {
		return folder.resolve("target/classes");
	}

	@Override
	public String toString() {
		return folder.getFileName().toString();
	}
}
