// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import wainscribe.model.Binder;
import wainscribe.model.Box;
import wainscribe.model.Brief;
import wainscribe.model.Fixture;
import wainscribe.model.FixtureType;
import wainscribe.model.GlossLevel;
import wainscribe.model.Home;
import wainscribe.model.Material;
import wainscribe.model.Opening;
import wainscribe.model.OpeningKind;
import wainscribe.model.Paint;
import wainscribe.model.Room;
import wainscribe.model.RoomUse;
import wainscribe.model.ServiceKind;
import wainscribe.model.Surface;
import wainscribe.model.Swing;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.survey.SurveyProblem.Severity;

/** What rows of all kinds become. */
class SurveyReaderTest {

	private static Survey everyKind() throws IOException, SurveyException {
		return Surveys.reader().read(Path.of("src_test", "fixtures", "odd", "every-kind.csv")).orRefuse();
	}

	private static Length mm(String millimetres) {
		return Length.ofMillimetres(new BigDecimal(millimetres));
	}

	@Test
	void readsTheHomeWithItsDecisions() throws Exception {
		Home home = everyKind().home();
		assertEquals("Client", home.getName());
		assertEquals("US", home.getCountry());
		assertEquals(1926, home.getBuilt());
		assertEquals("USD", home.getCurrency());
		assertEquals("8.25%", home.getTax().toString());
		assertEquals(List.of("builder=unknown"), home.getNotes());
		Brief brief = home.getBrief();
		assertEquals("frames-two-tier", brief.getPattern());
		assertEquals(Surveys.in("16"), brief.getFrameWidthMin());
		assertEquals(Surveys.in("30"), brief.getFrameWidthMax());
		assertEquals(Material.MR_MDF, brief.getMaterial());
		assertEquals(List.of(Surveys.in("96"), Surveys.in("144"), mm("4000")), brief.getStock());
		assertEquals(List.of("A", "C"), brief.getBoardWalls());
		Paint paint = home.getPaints().getFirst();
		assertEquals(Surface.CEILING, paint.getZone().getSurface());
		assertEquals("#ffffff", paint.getColour());
		assertEquals(3, paint.getCoats());
		assertFalse(paint.getMildew());
	}

	@Test
	void readsRoomsAndWalls() throws Exception {
		Room room = everyKind().rooms().getFirst();
		assertEquals(RoomUse.BATH_WITH_TUB, room.getUse());
		assertEquals(Surveys.in("96"), room.getHeight());
		assertEquals("80cfm", room.getFan().toString());
		assertTrue(room.getOpen());
		Wall wall = room.getWalls().get(0);
		assertEquals(Surveys.in("120 1/2"), wall.getLength());
		assertEquals(Surveys.in("108"), wall.getHeight());
		assertEquals(Surveys.in("90"), wall.getHeightRight());
		assertEquals(Surveys.in("-12"), wall.getFloorRight());
		assertEquals(new BigDecimal("135.5"), wall.getAngle());
		assertEquals(Surveys.in("16"), wall.getStudSpacing());
		assertEquals(Surveys.in("48"), wall.getCorner().getLegNext());
		assertEquals("by tape", wall.getCorner().getName());
		assertTrue(room.getWalls().get(1).getStudSpacingUnknown());
		assertEquals(mm("2500"), room.getWalls().get(2).getLength());
		assertEquals(room.getWalls().get(2), room.getDiagonals().getFirst().getTo());
	}

	@Test
	void readsWhatIsOnTheWalls() throws Exception {
		Room room = everyKind().rooms().getFirst();
		Opening door = room.getWalls().get(1).getOpenings().getFirst();
		assertEquals(OpeningKind.DOOR, door.getKind());
		assertEquals(Length.ZERO, door.getY());
		assertEquals(Swing.BYPASS, door.getSwing());
		Wall wall = room.getWalls().get(2);
		Fixture glass = wall.getFixtures().getFirst();
		assertEquals(FixtureType.MIRROR, glass.getType());
		assertEquals("20lb", glass.getLoad().toString());
		assertTrue(glass.getPlanned());
		assertEquals(Length.ZERO, wall.getFixtures().get(1).getY());
		assertEquals(Surveys.in("40"), room.getWalls().get(1).getFixtures().getFirst().getOpeningX());
		assertNull(wall.getTrims().getFirst().getWidth());
		assertEquals(Surveys.in("93"), wall.getTrims().getFirst().getY());
		assertEquals(List.of(ServiceKind.STUD, ServiceKind.PIPE, ServiceKind.CABLE), wall.getServices().stream().map(each -> each.getKind()).toList());
		assertEquals("by hand", wall.getPlacedFrames().getFirst().getName());
		assertEquals(List.of("A", "C"), room.getFinishes().getFirst().getZone().getWalls());
		assertEquals(Binder.UNKNOWN, room.getFinishes().getFirst().getBinder());
		assertEquals(GlossLevel.G7, room.getPaints().getFirst().getGloss());
		assertEquals("none", room.getBrief().getPattern());
		assertEquals(Surveys.in("40"), room.getBrief().getRail());
	}

	/** Sizes of plates: common practice; the British ones also BS 4662. x and y of the corner if the centre is at 1000, 400. */
	@ParameterizedTest
	@CsvSource({ "US, 1, 965 343 70 114", "US, 2, 942 343 116 114", "CA, 3, 919 343 162 114", "UK, 1, 957 357 86 86", "GB, 2, 927 357 146 86", "IE, 2, 927 357 146 86" })
	void platesFollowTheCountry(String country, int gangs, String outline) throws IOException {
		Survey survey = Surveys.readFile("# units: mm\n" + Surveys.HEADER + "home,,,,,,,,,,country=" + country
				+ "\nroom,R,,,,,,2400,,,\nwall,R,A,,,,4000,,,,\nbox,R,A,,1000,400,,,,,at=centre;gang=" + gangs + "\n");
		assertEquals(List.of(), survey.problems());
		assertEquals(outline, Surveys.outline(Surveys.wall(survey, "A").getBoxes().getFirst()));
	}

	@Test
	void aMeasuredPlateWinsOverItsGangs() throws IOException {
		Box box = Surveys.wall(Surveys.read(Surveys.HALL + "box,Hall,A,,10,16,3,5,,,gang=1\n"), "A").getBoxes().getFirst();
		assertEquals("254 406.4 76.2 127", Surveys.outline(box));
		assertEquals(1, box.getGang());
	}

	@Test
	void aPlateOfUnknownSizeIsOneGangAndDoubtful() throws IOException {
		Survey survey = Surveys.read("home,,,,,,,,,,country=US\n" + Surveys.HALL + "box,Hall,A,out,10,16,,,,,type=data\n");
		assertEquals("survey.csv, row 9, column width: \"\": plate not measured; taken as ~2 3/4\" x ~4 1/2\"",
				survey.problems().getFirst().inFile("survey.csv"));
		assertEquals("out", SurveyReport.of(survey).rooms().getFirst().doubtful().getFirst().element());
		assertEquals("254 406.4 70 114", Surveys.outline(Surveys.wall(survey, "A").getBoxes().getFirst()));
	}

	@ParameterizedTest
	@CsvSource({ "country=US, 0, NOTICE", "'', 1, NOTICE", "country=FR, 1, WARNING" })
	void onlyAPlateOfAnUnknownCountryIsDoubtful(String country, int problems, Severity severity) throws IOException {
		Survey survey = Surveys.read("home,,,,,,,,,," + country + "\n" + Surveys.HALL + "box,Hall,A,out,10,16,,,,,gang=1\n");
		assertEquals(problems, survey.problems().size());
		assertTrue(survey.problems().stream().allMatch(each -> each.severity() == severity));
	}

	@Test
	void aFractionNoTapeHasIsKeptAndDoubtful() throws IOException {
		Survey survey = Surveys.read(Surveys.HALL + "window,Hall,A,W,72 1/3,30,20,20,,,casing=2 1/3\n");
		assertEquals(List.of("survey.csv, row 8, column x: \"72 1/3\": no tape has this mark; kept as 72 21/64\"",
				"survey.csv, row 8, column note: casing: \"2 1/3\": no tape has this mark; kept as 2 21/64\""),
				survey.problems().stream().map(each -> each.inFile("survey.csv")).toList());
		assertEquals(2, SurveyReport.of(survey).rooms().getFirst().doubtful().size());
		assertEquals(Surveys.in("72 21/64"), Surveys.wall(survey, "A").getOpenings().getFirst().getX());
	}

	@Test
	void unknownKeysAndUnusedCellsAreSaidAndKeysKept() throws IOException {
		Survey survey = Surveys.read(Surveys.HALL + "window,Hall,A,W,10,30,20,20,,45,gfci=yes; colour of sash = green ;casing=2\n");
		assertTrue(survey.problems().stream().allMatch(each -> each.severity() == Severity.NOTICE));
		assertEquals(List.of("\"45\": not used in a row of this kind", "\"gfci=yes\": no key of this kind of row; kept as it is",
				"\"colour of sash = green\": no key of this kind of row; kept as it is"), survey.problems().stream().map(SurveyProblem::message).toList());
		assertEquals(List.of("gfci=yes", "colour of sash = green"), Surveys.wall(survey, "A").getOpenings().getFirst().getNotes());
		assertEquals(List.of(), SurveyReport.of(survey).rooms().getFirst().doubtful());
	}

	@Test
	void wrongUnitsAreDoubtful() throws IOException {
		Survey survey = Surveys.read("room,R,,,,,,2400,,,open=yes\nwall,R,A,,,,3650,,,,\nwall,R,B,,,,1/2,,,,\n");
		assertEquals(List.of("\"2400\": a ceiling at 200'; is the unit right?", "\"3650\": a wall of 304' 2\"; is the unit right?",
				"\"1/2\": a wall of only 1/2\"; is the unit right?"), survey.problems().stream().map(SurveyProblem::message).distinct().toList());
	}

	@Test
	void rowsMayStandInAnyOrder() throws IOException {
		Survey survey = Surveys.read("window,Hall,A,W,10,30,20,20,,,\nbrief,Hall,,,,,,,,,rail=36\n" + Surveys.HALL);
		assertEquals(List.of(), survey.problems());
		assertEquals("W", Surveys.wall(survey, "A").getOpenings().getFirst().getName());
	}

	@Test
	void withoutAUnitsLineLengthsNeedTheirUnit() throws IOException {
		Survey survey = Surveys.readFile(Surveys.HEADER + "room,R,,,,,,8',,,open=yes\nwall,R,A,,,,\"3650 mm\",,,,bow=0\n");
		assertEquals(List.of(), survey.problems());
		assertNull(survey.units());
		assertEquals(mm("3650"), Surveys.wall(survey, "A").getLength());
	}

	@Test
	void otherPatternsCountIfTheyAreKnown() throws IOException {
		String text = "# units: in\n" + Surveys.HEADER + Surveys.HALL + "brief,Hall,,,,,,,,,pattern=slats\n";
		SurveyReader reader = new SurveyReader(Set.of("slats"));
		Survey survey = reader.read("f", new java.io.ByteArrayInputStream(text.getBytes(java.nio.charset.StandardCharsets.UTF_8)));
		assertEquals("slats", survey.rooms().getFirst().getBrief().getPattern());
	}

	/** On stairs heights are told from the floor line; from the floor at the left end is taken too. Floor climbs 100, ceiling 200 to 300. */
	@ParameterizedTest
	@CsvSource({ "190, 40, false", "190, 150, false", "190, 292, true", "190, -1, true", "0, 195, false", "0, 206, true" })
	void heightsOnStairsAreTakenFromEitherFloor(String x, String y, boolean isRefused) throws IOException {
		Survey survey = Surveys.read("room,R,,,,,,200,,,open=yes\nwall,R,A,,,,200,,,,floor-right=100;height-right=200\nfixture,R,A,art," + x + "," + y
				+ ",10,4,,,type=art\n");
		assertEquals(isRefused, survey.firstError().isPresent());
	}

	@Test
	void idsAreReadableUniqueAndTheSameEachTime() throws Exception {
		Survey survey = Surveys.read(Surveys.HALL + "window,Hall,A,Ünder/the 🪟 sill,10,30,20,20,,,\nbox,Hall,A,,60,16,,,,,gang=1\nbox,Hall,A,,70,16,,,,,gang=1\npipe,Hall,B,,7,,,,,,\nbrief,Hall,,,,,,,,,rail=36\n");
		Room room = survey.rooms().getFirst();
		assertEquals("room-hall", room.getId());
		Wall wall = Surveys.wall(room, "A");
		assertEquals("wall-a", wall.getId());
		assertEquals("window-a-under-the-sill", wall.getOpenings().getFirst().getId());
		assertEquals("box-a", wall.getBoxes().get(0).getId());
		assertEquals("box-a-2", wall.getBoxes().get(1).getId());
		assertEquals("pipe-b", Surveys.wall(room, "B").getServices().getFirst().getId());
		assertEquals("brief", room.getBrief().getId());
		assertEquals("home", survey.home().getId());
	}

	@Test
	void aClosureProblemIsToldInTheRowOfTheWall() throws IOException {
		Survey survey = Surveys.read(Surveys.HALL.replace("wall,Hall,C,,,,120", "wall,Hall,C,,,,124"));
		assertEquals("survey.csv, row 6, column width: \"124\": expected the walls of room Hall to close; they miss by 4\", most likely in wall C (10' would close), else in A",
				survey.problems().getFirst().inFile("survey.csv"));
		assertFalse(survey.problems().getFirst().isError());
		assertEquals(1, SurveyReport.of(survey).rooms().getFirst().doubtful().size());
	}

	@Test
	void aFinishWithoutARoomIsInEveryRoom() throws IOException {
		Survey survey = Surveys.read(Surveys.HALL + "room,Den,,,,,,96,,,\nwall,Den,A,,,,120,,,,\nfinish,,,distemper,,,,,,,gloss=G1;odd=yes\n");
		assertEquals(List.of("distemper", "distemper"), survey.rooms().stream().map(room -> room.getFinishes().getFirst().getName()).toList());
		assertEquals(2, survey.problems().size());
	}

	@Test
	void manyRowsAreReadInNoTimeAndFarTooManyRefused() throws IOException {
		String window = "window,Hall,A,,10,30,1,1,,,\n";
		Survey many = Surveys.read(Surveys.HALL + window.repeat(19_995));
		assertEquals(19_994, many.problems().size());
		Survey tooMany = Surveys.read(Surveys.HALL + window.repeat(20_000));
		assertEquals("survey.csv, row 20003, column 1: \"window\": expected at most 20000 rows", tooMany.firstError().orElseThrow().inFile("survey.csv"));
	}

	@Test
	void aDiagonalThatDoesNotFitIsToldInItsOwnRow() throws IOException {
		Survey survey = Surveys.read(Surveys.HALL + "diagonal,Hall,,first,,,153 5/8,,,,from=A;to=C\ndiagonal,Hall,,second,,,160,,,,from=B;to=D\n");
		assertEquals(List.of("survey.csv, row 9, column width: \"160\": the diagonal from wall B to wall D measures 13' 4\", walls and angles give 12' 9 11/16\"; measure the corners between them"),
				survey.problems().stream().map(each -> each.inFile("survey.csv")).toList());
		assertEquals("second", SurveyReport.of(survey).rooms().getFirst().doubtful().getFirst().element());
	}
}
