// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** Every survey of the folder {@code bad} is refused with exactly the line that {@code messages.txt} has for it. */
class BadSurveysTest {

	private static final Path FOLDER = Path.of("src_test", "fixtures", "bad");

	@TestFactory
	Stream<DynamicTest> isRefusedInOneClearLine() throws IOException {
		return messages().stream().map(line -> {
			String file = line.substring(0, line.indexOf(".csv") + 4);
			return DynamicTest.dynamicTest(file, () -> {
				try (InputStream stream = Files.newInputStream(FOLDER.resolve(file))) {
					Survey survey = Surveys.reader().read(file, stream);
					SurveyException refused = assertThrows(SurveyException.class, survey::orRefuse);
					assertEquals(line, refused.getMessage());
					assertEquals(survey.firstError().orElseThrow(), refused.problem());
				}
			});
		});
	}

	@Test
	void everyFileHasItsMessage() throws IOException {
		try (Stream<Path> files = Files.list(FOLDER)) {
			List<String> names = files.map(file -> file.getFileName().toString()).filter(name -> name.endsWith(".csv")).sorted().toList();
			assertEquals(names, messages().stream().map(line -> line.substring(0, line.indexOf(".csv") + 4)).sorted().toList());
		}
	}

	@Test
	void aFolderForAFileIsRefused(@TempDir Path folder) throws IOException {
		Survey survey = Surveys.reader().read(folder);
		assertEquals(folder + ": expected a CSV file, found a folder", assertThrows(SurveyException.class, survey::orRefuse).getMessage());
	}

	@Test
	void aMissingFileIsRefused(@TempDir Path folder) throws IOException {
		Path missing = folder.resolve("none.csv");
		Survey survey = Surveys.reader().read(missing);
		assertEquals(missing + ": expected a CSV file, found nothing there", assertThrows(SurveyException.class, survey::orRefuse).getMessage());
	}

	@Test
	void allProblemsAreCollectedInTheOrderOfTheFile() throws IOException {
		Survey survey = Surveys.read("""
				wall,Hall,A,,,,-5,,,,
				window,Hall,A,W,x,30,20,20,,,glazing=paper
				wal,,,,,,,,,,
				room,Hall,,,,,,96,,,use=disco
				""");
		assertEquals(List.of(3, 4, 4, 5, 6), survey.problems().stream().map(SurveyProblem::row).toList());
		assertEquals(List.of("width", "x", "note", "kind", "note"), survey.problems().stream().map(SurveyProblem::column).toList());
		assertTrue(survey.problems().stream().allMatch(SurveyProblem::isError));
		assertEquals(4, survey.rows().size());
	}

	private static List<String> messages() throws IOException {
		return Files.readAllLines(FOLDER.resolve("messages.txt"), StandardCharsets.UTF_8);
	}
}
