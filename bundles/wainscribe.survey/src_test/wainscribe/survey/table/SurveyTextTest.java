// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.Duration;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Files that are no text, or far too much of it. */
class SurveyTextTest {

	/** Gives a beginning and then the same byte without end, counting what was taken. */
	private static final class Endless extends InputStream {

		private final byte[] beginning;
		private final String repeated;
		private long taken;

		Endless(String beginning, String repeated) {
			this.beginning = beginning.getBytes(StandardCharsets.UTF_8);
			this.repeated = repeated;
		}

		@Override
		public int read() {
			long at = taken++;
			return at < beginning.length ? beginning[(int) at] : repeated.charAt((int) (at % repeated.length()));
		}
	}

	@Test
	void aLineOfFiftyMegabytesIsRefusedAfterAHundredKilobytes() {
		Endless stream = new Endless("# units: in\r\nkind,room\r\nroom,\"a,b\",", "9");
		UnreadableException refused = assertTimeoutPreemptively(Duration.ofSeconds(5),
				() -> assertThrows(UnreadableException.class, () -> SurveyText.read(stream)));
		assertEquals("f, row 3, column 3: \"" + "9".repeat(60) + "...\": expected a line of at most 64 KB", refused.problem().inFile("f"));
		assertTrue(stream.taken < 100_000, "took " + stream.taken);
	}

	@Test
	void aFileWithoutEndIsRefused() {
		Endless stream = new Endless("", "room,Hall,,,,,,96,,,\n");
		UnreadableException refused = assertThrows(UnreadableException.class, () -> SurveyText.read(stream));
		assertTrue(refused.problem().inFile("f").endsWith(": expected the file to end: a survey has at most 16 MB"));
		assertTrue(stream.taken < 17L * 1024 * 1024, "took " + stream.taken);
	}

	@Test
	void aByteOrderMarkIsNoText() throws IOException, UnreadableException {
		assertEquals("kind", read("\ufeffkind".getBytes(StandardCharsets.UTF_8)));
		assertEquals("", read("\ufeff".getBytes(StandardCharsets.UTF_8)));
		assertEquals("", read(new byte[0]));
		assertEquals("🪟 ½ é", read("🪟 ½ é".getBytes(StandardCharsets.UTF_8)));
	}

	@ParameterizedTest
	@CsvSource({ "C3, 1, 1", "61 0A ED A0 80, 2, 1", "61 0D 0A 2C 2C BD, 2, 3", "61 0D 61 0A 22 2C 0A 2C FF, 4, 2", "F8 88 80 80 80, 1, 1", "C0 80, 1, 1" })
	void whatIsNoUtf8IsNamedByRowAndCell(String hex, int row, String cell) {
		byte[] bytes = java.util.HexFormat.ofDelimiter(" ").parseHex(hex);
		UnreadableException refused = assertThrows(UnreadableException.class, () -> read(bytes));
		assertEquals(row, refused.problem().row());
		assertEquals(cell, refused.problem().column());
	}

	private static String read(byte[] bytes) throws IOException, UnreadableException {
		return SurveyText.read(new ByteArrayInputStream(bytes));
	}
}
