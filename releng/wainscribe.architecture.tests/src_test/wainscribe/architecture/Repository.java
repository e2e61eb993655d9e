// SPDX-License-Identifier: EPL-2.0
package wainscribe.architecture;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The working copy that the tests look at. */
final class Repository {

	/** Top folder; the tests run in {@code releng/wainscribe.architecture.tests}. */
	static final Path ROOT = Path.of("../..").toAbsolutePath().normalize();

	private Repository() {
	}

	/** Every bundle of the project, by name. */
	static List<Bundle> bundles() {
		return children(ROOT.resolve("bundles")).stream().filter(path -> Files.exists(path.resolve("META-INF/MANIFEST.MF")))
			.map(Bundle::new).toList();
	}

	/** The bundle of that symbolic name. */
	static Optional<Bundle> bundle(String name) {
		return bundles().stream().filter(bundle -> bundle.name().equals(name)).findFirst();
	}

	/** What lies directly in a folder, sorted. */
	static List<Path> children(Path folder) {
		try (Stream<Path> paths = Files.list(folder)) {
			return paths.sorted().toList();
		} catch (IOException e) {
			throw new UncheckedIOException(e);
		}
	}

	/** Every file below a folder whose name ends so; none if the folder is not there. */
	static List<Path> files(Path folder, String ending) {
		if (!Files.isDirectory(folder)) {
			return List.of();
		}
		try (Stream<Path> paths = Files.walk(folder)) {
			return paths.filter(path -> path.getFileName().toString().endsWith(ending)).filter(Files::isRegularFile).sorted()
				.toList();
		} catch (IOException e) {
			throw new UncheckedIOException(e);
		}
	}

	/** A file as text. */
	static String text(Path file) {
		try {
			return Files.readString(file);
		} catch (IOException e) {
			throw new UncheckedIOException(e);
		}
	}

	/** Hand-written Java of the whole project: bundles, their tests, and release engineering. */
	static List<Path> handWrittenJava() {
		return Stream.of("bundles", "releng").flatMap(top -> files(ROOT.resolve(top), ".java").stream())
			.filter(path -> !ROOT.relativize(path).toString().replace('\\', '/').matches(".*/(src-gen|target|\\.tools|\\.workspace)/.*"))
			.toList();
	}
}
