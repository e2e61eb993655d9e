// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.constraints.LongRange;

import wainscribe.model.length.Length;
import wainscribe.model.length.LengthUnit;

/** CSV to home to CSV to home keeps every measurement and decision. */
class RoundTripTest {

	private static void assertKept(Survey first) throws IOException {
		assertEquals(List.of(), first.problems().stream().filter(SurveyProblem::isError).map(each -> each.inFile("f")).toList());
		String text = new SurveyWriter().write(first.home(), first.rooms());
		Survey second = Surveys.readFile(text);
		assertEquals(List.of(), second.problems().stream().filter(SurveyProblem::isError).map(each -> each.inFile("f")).toList(), text);
		assertTrue(EcoreUtil.equals(first.home(), second.home()), text);
		assertEquals(first.rooms().size(), second.rooms().size());
		for (int i = 0; i < first.rooms().size(); i++) {
			assertTrue(EcoreUtil.equals(first.rooms().get(i), second.rooms().get(i)), text);
		}
		assertEquals(text, new SurveyWriter().write(second.home(), second.rooms()));
	}

	@ParameterizedTest
	@ValueSource(strings = { "src_test/fixtures/odd/every-kind.csv", "src_test/fixtures/odd/odd-names.csv", "../../releng/demo/schoolhouse.csv" })
	void filesAreKept(String file) throws IOException {
		assertKept(Surveys.reader().read(Path.of(file)));
	}

	@Test
	void howBarsAreSawnIsKept() throws Exception {
		Survey survey = Surveys.readFile("# units: in\n" + Surveys.HEADER
				+ "home,,,Client,,,,,,,kerf=1/8;end-trim=0;shortest-offcut=12\nroom,Hall,,,,,,96,,,open=yes\nwall,Hall,A,,,,120,,,,\n").orRefuse();
		assertEquals(Length.ofInches(1, 8), survey.home().getKerf());
		assertEquals(Length.ZERO, survey.home().getEndTrim());
		assertEquals(Length.ofInches(12), survey.home().getShortestOffcut());
		assertKept(survey);
	}

	@Test
	void oddNamesAreText() throws Exception {
		Survey survey = Surveys.reader().read(Path.of("src_test", "fixtures", "odd", "odd-names.csv")).orRefuse();
		assertEquals("=HYPERLINK(\"x\",\"y\")", survey.home().getName());
		assertEquals("../../etc/pässe 🪟/<b>x</b>", survey.rooms().getFirst().getName());
		assertEquals("w\"all, \"3\"", survey.rooms().getFirst().getDiagonals().getFirst().getTo().getName());
		assertEquals("two\nlines", survey.rooms().getFirst().getDiagonals().getFirst().getName());
		assertEquals(List.of("A|B;C", "-1+2"), survey.rooms().getFirst().getBrief().getBoardWalls());
		assertEquals(List.of("A|B;C"), survey.rooms().getFirst().getPaints().get(0).getZone().getWalls());
		assertEquals(List.of("A|B;C", "-1+2"), survey.rooms().getFirst().getPaints().get(1).getZone().getWalls());
	}

	@Test
	void theOddFilesHaveTheBytesTheyAreHereFor() throws IOException {
		byte[] bytes = Files.readAllBytes(Path.of("src_test", "fixtures", "odd", "odd-names.csv"));
		assertEquals((byte) 0xEF, bytes[0]);
		assertTrue(new String(bytes, java.nio.charset.StandardCharsets.UTF_8).contains("\r\n"));
	}

	@Property(tries = 100)
	void generatedSurveysAreKept(@ForAll @LongRange(min = 0) long seed, @ForAll LengthUnit unit) throws IOException {
		assertKept(Surveys.readFile(new GeneratedSurvey(seed, unit).text()));
	}

	@Property(tries = 200)
	void namesOfAllKindsAreKept(@ForAll("names") String wall, @ForAll("names") String other, @ForAll("names") String name) throws IOException {
		if (wall.equals(other)) {
			return;
		}
		Survey first = Surveys.read(Surveys.HALL);
		first.rooms().getFirst().getWalls().get(0).setName(wall);
		first.rooms().getFirst().getWalls().get(1).setName(other);
		first.rooms().getFirst().setName(name);
		Survey renamed = Surveys.readFile(new SurveyWriter().write(first.home(), first.rooms()));
		wainscribe.model.Diagonal diagonal = wainscribe.model.WainscribeFactory.eINSTANCE.createDiagonal();
		diagonal.setFrom(renamed.rooms().getFirst().getWalls().get(0));
		diagonal.setTo(renamed.rooms().getFirst().getWalls().get(1));
		diagonal.setDistance(Surveys.in("120"));
		diagonal.setId("diagonal");
		renamed.rooms().getFirst().getDiagonals().add(diagonal);
		assertEquals(wall, diagonal.getFrom().getName());
		assertKept(renamed);
	}

	@Provide
	Arbitrary<String> names() {
		return net.jqwik.api.Arbitraries.strings().withChars(" aBc;|=\\\",'#/.\n\t<&>é🪟".codePoints().filter(Character::isBmpCodePoint)
				.mapToObj(c -> (char) c).map(String::valueOf).collect(java.util.stream.Collectors.joining()).toCharArray()).ofMinLength(1).ofMaxLength(12)
				.map(String::strip).filter(text -> !text.isEmpty() && !"C".equals(text) && !"D".equals(text));
	}
}
