// SPDX-License-Identifier: EPL-2.0
package wainscribe.model.generator;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The generated code in the repository is what the model's definition gives: nobody edited it, nobody forgot it. */
class GeneratedCodeTest {

	private static final Path BUNDLE = Path.of("../../bundles/wainscribe.model");

	@Test
	void generatedCodeIsCurrent(@TempDir Path folder) throws IOException {
		Path copy = folder.resolve("wainscribe.model");
		copyTree(BUNDLE.resolve("model"), copy.resolve("model"));
		new ModelGenerator(copy).generate();

		Map<String, String> expected = read(copy.resolve("src-gen"));
		Map<String, String> actual = read(BUNDLE.resolve("src-gen"));
		assertFalse(expected.isEmpty(), "the generator wrote nothing");
		assertEquals(expected.keySet(), actual.keySet(), "files of src-gen; run releng/regenerate-model");
		assertAll(expected.keySet().stream().map(file -> () -> assertEquals(expected.get(file), actual.get(file),
			file + " is not current; run releng/regenerate-model")));
	}

	private static Map<String, String> read(Path folder) throws IOException {
		Map<String, String> files = new TreeMap<>();
		try (Stream<Path> paths = Files.walk(folder)) {
			for (Path path : paths.filter(Files::isRegularFile).toList()) {
				String text = Files.readString(path).replace("\r\n", "\n");
				files.put(folder.relativize(path).toString().replace('\\', '/'), text);
			}
		}
		return files;
	}

	private static void copyTree(Path from, Path to) throws IOException {
		try (Stream<Path> paths = Files.walk(from)) {
			for (Path path : paths.toList()) {
				Path target = to.resolve(from.relativize(path).toString());
				if (Files.isDirectory(path)) {
					Files.createDirectories(target);
				} else {
					Files.copy(path, target);
				}
			}
		}
	}
}
