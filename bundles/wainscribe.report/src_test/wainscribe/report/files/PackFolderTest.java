// SPDX-License-Identifier: EPL-2.0
package wainscribe.report.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PackFolderTest {

	@TempDir
	private Path temp;
	private Path folder;

	@BeforeEach
	void nameTheFolder() {
		folder = temp.resolve("pack");
	}

	private List<Path> pack(String content, String... names) throws IOException {
		return new PackFolder(folder).replace(draft -> {
			for (String name : names) {
				Files.createDirectories(draft.resolve(name).getParent());
				Files.writeString(draft.resolve(name), content);
			}
		});
	}

	private Map<String, String> files() throws IOException {
		Map<String, String> files = new TreeMap<>();
		try (Stream<Path> paths = Files.walk(temp)) {
			for (Path path : paths.filter(Files::isRegularFile).toList()) {
				files.put(temp.relativize(path).toString().replace('\\', '/'), Files.readString(path));
			}
		}
		return files;
	}

	@Test
	void aFirstPackComesWithItsList() throws IOException {
		assertEquals(List.of(folder.resolve("a"), folder.resolve("d/b")), pack("1", "d/b", "a"));
		assertEquals(Map.of("pack/a", "1", "pack/d/b", "1", "pack/.pack-files", "a\nd/b\n"), files());
	}

	@Test
	void whatTheEarlierPackHadMoreGoesAndItsEmptyFolderToo() throws IOException {
		pack("1", "a", "d/b", "e/c");
		Files.writeString(folder.resolve("e/mine"), "x");
		pack("2", "a");
		assertEquals(Map.of("pack/a", "2", "pack/e/mine", "x", "pack/.pack-files", "a\n"), files());
		assertTrue(Files.notExists(folder.resolve("d")));
	}

	@Test
	void aFileNoPackWroteIsInTheWayAndNothingChanges() throws IOException {
		pack("1", "a", "z");
		Files.writeString(folder.resolve("b"), "mine");
		Map<String, String> before = files();
		FileAlreadyExistsException refused = assertThrows(FileAlreadyExistsException.class, () -> pack("2", "a", "b"));
		assertEquals(folder.resolve("b").toString(), refused.getFile());
		assertEquals(before, files());
	}

	@Test
	void aFolderInPlaceOfAFileAndAFileInPlaceOfAFolderAreInTheWay() throws IOException {
		pack("1", "a");
		Files.createDirectories(folder.resolve("b"));
		Files.writeString(folder.resolve("c"), "mine");
		Map<String, String> before = files();
		assertThrows(FileAlreadyExistsException.class, () -> pack("2", "a", "b"));
		assertThrows(FileAlreadyExistsException.class, () -> pack("2", "a", "c/d"));
		assertEquals(before, files());
	}

	@Test
	void aFileAboveTheFolderIsNamed() throws IOException {
		Path file = Files.writeString(temp.resolve("file"), "mine");
		folder = file.resolve("deeper/pack");
		FileAlreadyExistsException refused = assertThrows(FileAlreadyExistsException.class, () -> pack("1", "a"));
		assertEquals(file + ": is a file; expected a folder", refused.getMessage());
		assertEquals(Map.of("file", "mine"), files());
	}

	@Test
	void aFailureLeavesTheEarlierPack() throws IOException {
		pack("1", "a");
		Map<String, String> before = files();
		assertThrows(IOException.class, () -> new PackFolder(folder).replace(draft -> {
			Files.writeString(draft.resolve("a"), "2");
			throw new IOException("disk full");
		}));
		assertEquals(before, files());
	}

	@Test
	void anExchangeIsTakenBack() throws IOException {
		pack("1", "a", "d/b");
		Map<String, String> before = files();
		Path draft = Files.createDirectory(temp.resolve("draft"));
		Files.writeString(draft.resolve("a"), "2");
		Files.writeString(draft.resolve("n"), "2");
		PackFileExchange exchange = new PackFileExchange(folder, Files.createDirectory(temp.resolve("old")));
		exchange.put(draft.resolve("a"), "a");
		exchange.put(draft.resolve("n"), "n");
		exchange.remove("d/b");
		assertEquals(Map.of("pack/a", "2", "pack/n", "2", "old/a", "1", "old/d/b", "1", "pack/.pack-files", "a\nd/b\n"), files());
		IOException reason = new IOException();
		exchange.undo(reason);
		assertEquals(before, files());
		assertEquals(0, reason.getSuppressed().length);
	}

	@Test
	void aListThatNamesOtherPlacesTouchesNothingThere() throws IOException {
		pack("1", "a");
		Files.writeString(temp.resolve("outside"), "mine");
		Files.writeString(folder.resolve(".pack-files"), "a\n../outside\n/etc/hostname\nd/../a\n\n\0\n.pack-files\n");
		pack("2", "a");
		assertEquals(Map.of("outside", "mine", "pack/a", "2", "pack/.pack-files", "a\n"), files());
	}
}
