// SPDX-License-Identifier: EPL-2.0
package wainscribe.report;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
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
			for (Path path : paths.filter(Files::isRegularFile).toList()) {
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
		assertTrue(files.keySet().containsAll(List.of("pack.html", "pack.pdf", "pieces.csv", "quantities.xlsx",
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
	void anEarlierPackIsReplacedAsAWhole() throws IOException {
		Path pack = temp.resolve("pack");
		new ClientPack(services).write(content, pack, PackProgress.NONE);
		Files.writeString(pack.resolve("elevations/stale.svg"), "old");
		new ClientPack(services).write(content, pack, PackProgress.NONE);
		assertTrue(Files.notExists(pack.resolve("elevations/stale.svg")));
		assertTrue(Files.exists(pack.resolve("pack.pdf")));
		assertEquals(List.of("pack"), beside());
	}

	@Test
	void whoeverStopsItFindsTheOldPackAsItWas() throws IOException {
		Path pack = temp.resolve("pack");
		Files.createDirectories(pack);
		Files.writeString(pack.resolve("pack.html"), "old");
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
		assertEquals(List.of("pack.html"), List.copyOf(files(pack).keySet()));
		assertEquals("old", Files.readString(pack.resolve("pack.html")));
		assertEquals(List.of("pack"), beside());
	}

	@Test
	void aFolderWithOtherThingsIsRefused() throws IOException {
		Path foreign = Files.createDirectories(temp.resolve("photos"));
		Files.writeString(foreign.resolve("cat.jpg"), "cat");
		assertThrows(FileAlreadyExistsException.class,
				() -> new ClientPack(services).write(content, foreign, PackProgress.NONE));
		assertThrows(FileAlreadyExistsException.class,
				() -> new ClientPack(services).write(content, foreign.resolve("cat.jpg"), PackProgress.NONE));
		assertEquals(List.of("cat.jpg"), List.copyOf(files(foreign).keySet()));
		assertEquals(List.of("photos"), beside());
	}
}
