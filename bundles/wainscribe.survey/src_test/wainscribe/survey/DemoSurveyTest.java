// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;

import org.junit.jupiter.api.Test;

import wainscribe.survey.closure.RoomClosure;

/** The demo survey reads without a word, and its rooms close. */
class DemoSurveyTest {

	@Test
	void readsWithoutProblems() throws Exception {
		Survey survey = Surveys.reader().read(Path.of("..", "..", "releng", "demo", "schoolhouse.csv")).orRefuse();
		assertEquals(List.of(), survey.problems());
		List<RoomClosure> rooms = SurveyReport.of(survey).rooms();
		assertEquals(List.of("Reading room", "Shower room", "Hall", "Teacher's study"), rooms.stream().map(RoomClosure::room).toList());
		assertEquals(List.of(RoomClosure.Verdict.CLOSES), rooms.stream().map(RoomClosure::verdict).distinct().toList());
		assertEquals(List.of(4, 4, 5, 6), rooms.stream().map(RoomClosure::walls).toList());
	}
}
