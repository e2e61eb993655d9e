// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Random;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;

import wainscribe.model.WainscribeFactory;

/** Whatever happens to a file, reading it ends in a survey or in problems of one line each, never in an exception. */
class DamagedSurveyTest {

	private static final List<byte[]> FILES = List.of(bytes("src_test/fixtures/odd/every-kind.csv"), bytes("src_test/fixtures/odd/odd-names.csv"),
			new GeneratedSurvey(7, wainscribe.model.length.LengthUnit.MILLIMETRE).text().getBytes(StandardCharsets.UTF_8));
	private static final List<String> SCRAPS = List.of(",", "\"", "\n", "\r", ";", "=", "|", "#", "-", "0", "9999999", "1/0", "..", "\\", "\0", " ", "mm", "'", "½", "🪟",
			"yes", "at=centre", "wall", "\ufeff", "=1+1", "# units: mm\n");

	private static byte[] bytes(String file) {
		try {
			return Files.readAllBytes(Path.of(file));
		} catch (IOException e) {
			throw new UncheckedIOException(e);
		}
	}

	private static byte[] damaged(byte[] whole, Random random) {
		byte[] bytes = whole;
		for (int i = 0; i <= random.nextInt(4); i++) {
			int from = random.nextInt(bytes.length);
			int to = Math.min(bytes.length, from + random.nextInt(12));
			byte[] scrap = random.nextInt(8) == 0 ? new byte[] { (byte) random.nextInt() }
					: SCRAPS.get(random.nextInt(SCRAPS.size())).getBytes(StandardCharsets.UTF_8);
			byte[] next = Arrays.copyOf(bytes, bytes.length - (to - from) + scrap.length);
			System.arraycopy(scrap, 0, next, from, scrap.length);
			System.arraycopy(bytes, to, next, from + scrap.length, bytes.length - to);
			bytes = next;
		}
		return bytes;
	}

	@Property(tries = 400)
	void isReadOrRefused(@ForAll @LongRange(min = 0) long seed) throws IOException {
		Random random = new Random(seed);
		byte[] bytes = damaged(FILES.get(random.nextInt(FILES.size())), random);
		Survey survey = Surveys.reader().read("damaged.csv", new ByteArrayInputStream(bytes));
		for (SurveyProblem problem : survey.problems()) {
			String line = problem.inFile("damaged.csv");
			assertTrue(line.startsWith("damaged.csv, row " + problem.row() + ", column "), line);
			assertEquals(1, line.lines().count(), line);
			assertTrue(line.length() < 1500, line);
		}
		if (survey.firstError().isEmpty()) {
			SurveyReport.of(survey);
			String text = new SurveyWriter().write(survey.home(), survey.rooms());
			assertTrue(Surveys.readFile(text).firstError().isEmpty(), text);
			new SurveyImport().into(survey, WainscribeFactory.eINSTANCE.createHome(), List.of());
		}
	}
}
