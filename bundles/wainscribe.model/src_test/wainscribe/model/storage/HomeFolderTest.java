// SPDX-License-Identifier: EPL-2.0
package wainscribe.model.storage;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import wainscribe.model.Box;
import wainscribe.model.Diagonal;
import wainscribe.model.Home;
import wainscribe.model.Room;
import wainscribe.model.WainscribeFactory;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.model.length.LengthUnit;
import wainscribe.model.measure.Measure;

class HomeFolderTest {

	private static final WainscribeFactory MODEL = WainscribeFactory.eINSTANCE;

	@TempDir
	private Path folder;

	@Test
	void whatWasSavedIsReadBackEqual() throws IOException {
		HomeFolder written = saved(rooms("Lesezimmer 📚", "../../outside"));
		HomeFolder read = HomeFolder.open(folder.resolve("home"));
		assertTrue(EcoreUtil.equals(written.home(), read.home()));
		assertTrue(EcoreUtil.equals(written.rooms(), read.rooms()));
		assertEquals(List.of("Lesezimmer 📚", "../../outside"), read.rooms().stream().map(Room::getName).toList());
	}

	@Test
	void namesNeverLeaveTheHome() throws IOException {
		saved(rooms("../../outside", "/etc/passwd", "con", "CON", "", "a/b\\c"));
		try (Stream<Path> files = Files.walk(folder)) {
			assertEquals(List.of("a-b-c.room", "etc-passwd.room", "outside.room", "room-con-2.room", "room-con.room", "room.room", "wainscribe.home"),
					files.filter(Files::isRegularFile).map(path -> path.getFileName().toString()).sorted().toList());
		}
	}

	@Test
	void savingTwiceTouchesNothing() throws IOException {
		HomeFolder home = saved(rooms("Hall"));
		Path file = home.fileOf(home.rooms().get(0));
		Files.setLastModifiedTime(file, java.nio.file.attribute.FileTime.fromMillis(1000));
		home.save();
		assertEquals(1000, Files.getLastModifiedTime(file).toMillis());
	}

	@Test
	void lengthsAreWrittenAsPeopleWriteThemOneElementALine() throws IOException {
		HomeFolder home = saved(rooms("Hall"));
		List<String> lines = Files.readAllLines(home.fileOf(home.rooms().get(0)));
		String box = lines.stream().filter(line -> line.contains("<boxes")).findFirst().orElseThrow();
		assertTrue(box.contains("x=\"62 1/4&quot;\"") && box.contains("width=\"70 mm\"") && box.endsWith("/>"), box);
	}

	@Test
	void aCutFileIsNamedWithRowAndColumnAndKept() throws IOException {
		HomeFolder home = saved(rooms("Hall"));
		Path file = home.fileOf(home.rooms().get(0));
		byte[] whole = Files.readAllBytes(file);
		for (int length = 1; length < whole.length - 2; length += 7) {
			byte[] cut = java.util.Arrays.copyOf(whole, length);
			Files.write(file, cut);
			HomeFileException e = assertThrows(HomeFileException.class, () -> HomeFolder.open(folder.resolve("home")));
			assertTrue(e.getMessage().startsWith(file.toString()) && e.getMessage().contains("expected"), e.getMessage());
			assertFalse(e.getMessage().contains("\n"));
			assertArrayEquals(cut, Files.readAllBytes(file));
		}
	}

	@Test
	void entitiesAreRefused() throws IOException {
		HomeFolder home = saved(rooms("Hall"));
		Path file = home.fileOf(home.rooms().get(0));
		Files.writeString(file, "<?xml version=\"1.0\"?>\n<!DOCTYPE r [<!ENTITY a \"aaaa\"><!ENTITY b \"&a;&a;&a;\">]>\n<r>&b;</r>");
		HomeFileException e = assertThrows(HomeFileException.class, () -> HomeFolder.open(folder.resolve("home")));
		assertTrue(e.getMessage().contains("row 2") && e.getMessage().endsWith("a document type; expected none"), e.getMessage());
	}

	@Test
	void aWrongLengthIsNamedWithItsPlace() throws IOException {
		HomeFolder home = saved(rooms("Hall"));
		Path file = home.fileOf(home.rooms().get(0));
		Files.writeString(file, Files.readString(file).replace("62 1/4&quot;", "62 1/0"));
		HomeFileException e = assertThrows(HomeFileException.class, () -> HomeFolder.open(folder.resolve("home")));
		assertTrue(e.getMessage().contains(", row ") && e.getMessage().contains("62 1/0"), e.getMessage());
	}

	@Test
	void newerFilesAndForeignFilesAreRefused() throws IOException {
		HomeFolder home = saved(rooms("Hall"));
		Path file = home.fileOf(home.rooms().get(0));
		String text = Files.readString(file);
		Files.writeString(file, text.replaceFirst("formatVersion=\"1\"|(?=name=\"Hall\")", "formatVersion=\"7\" "));
		assertTrue(assertThrows(HomeFileException.class, () -> HomeFolder.open(folder.resolve("home"))).getMessage()
				.endsWith("written by a newer Wainscribe (format version 7); expected at most 1"));
		Files.write(file, new byte[] { (byte) 0xff, (byte) 0xfe, 0x41 });
		assertTrue(assertThrows(HomeFileException.class, () -> HomeFolder.open(folder.resolve("home"))).getMessage()
				.endsWith("is not encoded as expected; expected UTF-8"));
		Files.delete(file);
		Files.createDirectory(file);
		assertTrue(assertThrows(HomeFileException.class, () -> HomeFolder.open(folder.resolve("home"))).getMessage()
				.endsWith("is no file; expected a file"));
	}

	@Test
	void olderFilesAreLifted() throws IOException {
		HomeFolder home = saved(rooms("Hall"));
		Path file = home.fileOf(home.rooms().get(0));
		Files.writeString(file, Files.readString(file).replace("name=\"Hall\"", "formatVersion=\"0\" title=\"Hall\""));
		FormatMigration renameTitle = new FormatMigration() {
			@Override
			public int fromVersion() {
				return 0;
			}

			@Override
			public String migrate(String xml) {
				return xml.replace("formatVersion=\"0\"", "formatVersion=\"1\"").replace("title=", "name=");
			}
		};
		assertEquals("Hall", HomeFolder.open(folder.resolve("home"), List.of(renameTitle)).rooms().get(0).getName());
		assertThrows(HomeFileException.class, () -> HomeFolder.open(folder.resolve("home")));
	}

	@Test
	void aMissingOrWrongFolderIsNamed() {
		assertTrue(assertThrows(HomeFileException.class, () -> HomeFolder.open(folder)).getMessage()
				.endsWith("holds no home; expected the file wainscribe.home"));
		assertTrue(assertThrows(HomeFileException.class, () -> HomeFolder.open(folder.resolve("nowhere"))).getMessage()
				.endsWith("expected the folder of a home"));
	}

	private HomeFolder saved(List<Room> rooms) throws IOException {
		Home home = MODEL.createHome();
		home.setId("home");
		home.setName("Schoolhouse <&\"=cmd>");
		home.setUnits(LengthUnit.INCH);
		home.setTax(Measure.parse("8.25%"));
		HomeFolder written = HomeFolder.create(folder.resolve("home"), home);
		rooms.forEach(written::add);
		written.save();
		return written;
	}

	private static List<Room> rooms(String... names) {
		return Stream.of(names).map(HomeFolderTest::room).toList();
	}

	private static Room room(String name) {
		Room room = MODEL.createRoom();
		room.setId("room");
		room.setName(name);
		room.setHeight(Length.ofInches(96));
		for (String letter : List.of("A", "B")) {
			Wall wall = MODEL.createWall();
			wall.setId("wall-" + letter.toLowerCase(java.util.Locale.ROOT));
			wall.setName(letter);
			wall.setLength(Length.ofInches(289, 2));
			room.getWalls().add(wall);
		}
		Box box = MODEL.createBox();
		box.setId("box-outlet");
		box.setX(Length.ofInches(249, 4));
		box.setWidth(Length.ofMillimetres(70));
		box.setGfci(Boolean.TRUE);
		room.getWalls().get(0).getBoxes().add(box);
		Diagonal diagonal = MODEL.createDiagonal();
		diagonal.setFrom(room.getWalls().get(0));
		diagonal.setTo(room.getWalls().get(1));
		diagonal.setDistance(new Length(1));
		room.getDiagonals().add(diagonal);
		return room;
	}
}
