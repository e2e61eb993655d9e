// SPDX-License-Identifier: EPL-2.0
package wainscribe.model.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FileDraftsTest {

	@TempDir
	private Path folder;

	private static byte[] bytes(String text) {
		return text.getBytes(StandardCharsets.UTF_8);
	}

	private Map<String, String> files() throws IOException {
		Map<String, String> files = new TreeMap<>();
		try (Stream<Path> paths = Files.walk(folder)) {
			for (Path path : paths.filter(Files::isRegularFile).toList()) {
				files.put(folder.relativize(path).toString().replace('\\', '/'), Files.readString(path));
			}
		}
		return files;
	}

	@Test
	void allFilesChangeTogether() throws IOException {
		Files.writeString(folder.resolve("home"), "old");
		try (FileDrafts drafts = new FileDrafts()) {
			drafts.add(folder.resolve("rooms/hall"), bytes("new"));
			drafts.add(folder.resolve("home"), bytes("new"));
			assertEquals("old", Files.readString(folder.resolve("home")));
			drafts.place();
		}
		assertEquals(Map.of("home", "new", "rooms/hall", "new"), files());
	}

	@Test
	void oneThatCannotBeWrittenLeavesAllOthersOld() throws IOException {
		Files.writeString(folder.resolve("home"), "old");
		Files.writeString(folder.resolve("rooms"), "a file in the way");
		try (FileDrafts drafts = new FileDrafts()) {
			drafts.add(folder.resolve("home"), bytes("new"));
			assertThrows(IOException.class, () -> drafts.add(folder.resolve("rooms/hall"), bytes("new")));
		}
		assertEquals(Map.of("home", "old", "rooms", "a file in the way"), files());
	}

	@Test
	void aFileMayBeReadByWhoeverMayReadAnyNewFile() throws IOException {
		Path plain = Files.writeString(folder.resolve("plain"), "1");
		try (FileDrafts drafts = new FileDrafts()) {
			drafts.add(folder.resolve("home"), bytes("1"));
			drafts.place();
		}
		assertEquals(view(plain), view(folder.resolve("home")));
	}

	/** Returns the permissions where files have any, as text. */
	private static String view(Path file) throws IOException {
		return file.getFileSystem().supportedFileAttributeViews().contains("posix")
				? Files.getPosixFilePermissions(file).toString()
				: "";
	}
}
