// SPDX-License-Identifier: EPL-2.0
package wainscribe.architecture;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.jar.JarFile;
import java.util.jar.Manifest;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The bundles that the target platform names, read from the local artifact repository. */
final class TargetBundles {

	private static final Pattern ARTIFACT = Pattern
		.compile("<groupId>([^<]+)</groupId><artifactId>([^<]+)</artifactId><version>([^<]+)</version>");

	private TargetBundles() {
	}

	/** Manifests by symbolic name. */
	static Map<String, BundleManifest> manifests() {
		Path repository = Path.of(System.getProperty("repository.local"));
		Map<String, BundleManifest> found = new HashMap<>();
		Matcher artifact = ARTIFACT
			.matcher(Repository.text(Repository.ROOT.resolve("releng/wainscribe.target/wainscribe.target")));
		while (artifact.find()) {
			Path jar = repository.resolve(artifact.group(1).replace('.', '/')).resolve(artifact.group(2))
				.resolve(artifact.group(3)).resolve(artifact.group(2) + '-' + artifact.group(3) + ".jar");
			if (Files.exists(jar)) {
				read(jar, found);
			}
		}
		return found;
	}

	private static void read(Path jar, Map<String, BundleManifest> found) {
		try (JarFile file = new JarFile(jar.toFile())) {
			Manifest manifest = file.getManifest();
			if (manifest != null) {
				BundleManifest bundle = new BundleManifest(manifest);
				found.put(bundle.name(), bundle);
			}
		} catch (IOException e) {
			throw new UncheckedIOException(e);
		}
	}
}
