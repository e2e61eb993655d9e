// SPDX-License-Identifier: EPL-2.0
package wainscribe.report;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

import org.eclipse.core.runtime.OperationCanceledException;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import wainscribe.model.length.LengthUnit;

class ClientPackTest {

	private static DesignServices services;
	private static PackContent content;

	@TempDir
	private Path temp;

	@BeforeAll
	static void designOnce() {
		services = DesignServices.builtIn();
		content = new SampleHome("Old school <b>house</b>", LengthUnit.MILLIMETRE).room("../../Hall").room("../../hall")
				.room("\ud83d\udecb").content(services);
	}

	private static Map<String, byte[]> files(Path folder) throws IOException {
		Map<String, byte[]> files = new TreeMap<>();
		try (Stream<Path> paths = Files.walk(folder)) {
			for (Path path : paths.filter(Files::isRegularFile).filter(path -> !path.endsWith(".pack-files")).toList()) {
				files.put(folder.relativize(path).toString().replace('\\', '/'), Files.readAllBytes(path));
			}
		}
		return files;
	}

	private List<String> beside() throws IOException {
		try (Stream<Path> paths = Files.list(temp)) {
			return paths.map(path -> path.getFileName().toString()).sorted().toList();
		}
	}

	@Test
	void holdsEveryPartUnderSafeNames() throws IOException {
		List<Path> written = new ClientPack(services).write(content, temp.resolve("pack"), PackProgress.NONE);
		Map<String, byte[]> files = files(temp.resolve("pack"));
		assertEquals(written.size(), files.size());
		assertTrue(files.keySet().containsAll(List.of("pack.html", "pack.pdf", "cut-sheet.pdf", "piece-labels.pdf", "pieces.csv", "quantities.xlsx",
				"elevations/hall-a.svg", "elevations/hall-a.dxf", "elevations/hall-a-2.svg")), files.keySet()::toString);
		assertEquals(3 * 4 * 2, files.keySet().stream().filter(name -> name.startsWith("elevations/")).count());
		assertTrue(files.keySet().stream().allMatch(name -> name.matches("(elevations/)?[a-z0-9-]+\\.[a-z]+")),
				files.keySet()::toString);
		assertEquals(List.of("pack"), beside());
	}

	@Test
	void equalContentGivesEqualFiles() throws IOException {
		new ClientPack(services).write(content, temp.resolve("one"), PackProgress.NONE);
		new ClientPack(services).write(content, temp.resolve("two"), PackProgress.NONE);
		Map<String, byte[]> one = files(temp.resolve("one"));
		Map<String, byte[]> two = files(temp.resolve("two"));
		assertEquals(one.keySet(), two.keySet());
		one.forEach((name, bytes) -> assertArrayEquals(bytes, two.get(name), name));
	}

	@Test
	void anEarlierPackIsReplacedAndOtherFilesStay() throws IOException {
		Path pack = Files.createDirectories(temp.resolve("pack"));
		Files.writeString(pack.resolve("notes.txt"), "mine");
		PackContent before = new SampleHome("Cottage", LengthUnit.MILLIMETRE).room("Porch").content(services);
		new ClientPack(services).write(before, pack, PackProgress.NONE);
		Files.writeString(pack.resolve("elevations/photo.jpg"), "mine too");
		assertTrue(Files.exists(pack.resolve("elevations/porch-a.svg")));
		List<Path> written = new ClientPack(services).write(content, pack, PackProgress.NONE);
		Map<String, byte[]> files = files(pack);
		assertEquals("mine", new String(files.remove("notes.txt"), StandardCharsets.UTF_8));
		assertEquals("mine too", new String(files.remove("elevations/photo.jpg"), StandardCharsets.UTF_8));
		assertEquals(written, files.keySet().stream().map(pack::resolve).toList());
		assertEquals(List.of("pack"), beside());
	}

	@Test
	void whoeverStopsItFindsTheOldPackAsItWas() throws IOException {
		Path pack = temp.resolve("pack");
		new ClientPack(services).write(content, pack, PackProgress.NONE);
		Files.writeString(pack.resolve("pack.html"), "old");
		List<String> before = List.copyOf(files(pack).keySet());
		List<String> steps = new ArrayList<>();
		PackProgress stopping = new PackProgress() {
			@Override
			public void step(String what, int done, int total) {
				steps.add(what);
			}

			@Override
			public boolean isCancelled() {
				return steps.size() == 3;
			}
		};
		assertThrows(OperationCanceledException.class, () -> new ClientPack(services).write(content, pack, stopping));
		assertEquals(List.of("pack.html", "pack.pdf", "elevations/hall-a"), steps);
		assertEquals(before, List.copyOf(files(pack).keySet()));
		assertEquals("old", Files.readString(pack.resolve("pack.html")));
		assertEquals(List.of("pack"), beside());
	}

	@Test
	void aFileInTheWayIsNeverReplaced() throws IOException {
		Path folder = Files.createDirectories(temp.resolve("photos"));
		Files.writeString(folder.resolve("pack.pdf"), "another's");
		FileAlreadyExistsException refused = assertThrows(FileAlreadyExistsException.class,
				() -> new ClientPack(services).write(content, folder, PackProgress.NONE));
		assertEquals(folder.resolve("pack.pdf").toString(), refused.getFile());
		assertThrows(FileAlreadyExistsException.class,
				() -> new ClientPack(services).write(content, folder.resolve("pack.pdf"), PackProgress.NONE));
		assertEquals(List.of("pack.pdf"), List.copyOf(files(folder).keySet()));
		assertEquals("another's", Files.readString(folder.resolve("pack.pdf")));
		assertEquals(List.of("photos"), beside());
	}
}
