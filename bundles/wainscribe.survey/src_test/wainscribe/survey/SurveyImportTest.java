// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import wainscribe.model.Element;
import wainscribe.model.Fixture;
import wainscribe.model.Home;
import wainscribe.model.PlacedFrame;
import wainscribe.model.Price;
import wainscribe.model.ProfileReference;
import wainscribe.model.Room;
import wainscribe.model.WainscribeFactory;
import wainscribe.model.Wall;
import wainscribe.model.length.LengthUnit;
import wainscribe.survey.SurveyChange.Kind;

/** What measuring again does to a home. */
class SurveyImportTest {

	private static final String CONTENTS = """
			home,,,Client,,,,,,,country=US
			brief,Hall,,,,,,,,,rail=36;gap=3
			diagonal,Hall,,across,,,153,,,,from=A;to=C
			window,Hall,A,W,10,30,20,20,,,
			box,Hall,A,,60,16,,,,,gang=1
			box,Hall,A,,80,16,,,,,gang=1
			corner,Hall,B,,,,36,48,60,,
			paint,Hall,,green,,,,,,,surface=lower;gloss=G3
			""";

	private final SurveyImport survey = new SurveyImport();
	private final Home home = WainscribeFactory.eINSTANCE.createHome();
	private List<Room> rooms;

	private SurveyImport.Result read(String rows) throws IOException {
		SurveyImport.Result result = survey.into(Surveys.read(rows), home, rooms);
		rooms = result.rooms();
		return result;
	}

	private Wall wall(String name) {
		return Surveys.wall(rooms.getFirst(), name);
	}

	private static void assertChanges(SurveyImport.Result result, SurveyChange... changes) {
		assertEquals(Set.of(changes), Set.copyOf(result.changes()));
	}

	@BeforeEach
	void measureOnce() throws IOException {
		rooms = List.of();
		assertChanges(read(Surveys.HALL + CONTENTS), new SurveyChange(Kind.ADDED, "Hall", ""), new SurveyChange(Kind.CHANGED, "", ""));
		assertEquals(LengthUnit.INCH, home.getUnits());
	}

	@Test
	void theSameSurveyChangesNothing() throws IOException {
		Room before = EcoreUtil.copy(rooms.getFirst());
		Room same = rooms.getFirst();
		assertEquals(List.of(), read(Surveys.HALL + CONTENTS).changes());
		assertSame(same, rooms.getFirst());
		assertTrue(EcoreUtil.equals(before, rooms.getFirst()));
	}

	@Test
	void elementsKeepTheirIdsAndWhatNoSurveyCarries() throws IOException {
		rooms.getFirst().setId("my-room");
		wall("A").setId("my-wall");
		wall("A").getOpenings().getFirst().setId("my-window");
		ProfileReference profile = WainscribeFactory.eINSTANCE.createProfileReference();
		profile.setProfile("ogee");
		rooms.getFirst().getBrief().getProfiles().add(profile);
		Price price = WainscribeFactory.eINSTANCE.createPrice();
		home.getPrices().add(price);
		home.getRoomOrder().add("hall.room");
		SurveyImport.Result result = read(Surveys.HALL + CONTENTS.replace("W,10,30", "W,11,30").replace("rail=36", "rail=38"));
		assertChanges(result, new SurveyChange(Kind.CHANGED, "Hall", "A / W"), new SurveyChange(Kind.CHANGED, "Hall", "brief"));
		assertEquals("my-room", rooms.getFirst().getId());
		assertEquals("my-wall", wall("A").getId());
		assertEquals("my-window", wall("A").getOpenings().getFirst().getId());
		assertEquals(Surveys.in("11"), wall("A").getOpenings().getFirst().getX());
		assertEquals(Surveys.in("38"), rooms.getFirst().getBrief().getRail());
		assertEquals(List.of(profile), rooms.getFirst().getBrief().getProfiles());
		assertEquals(List.of(price), home.getPrices());
		assertEquals(List.of("hall.room"), home.getRoomOrder());
	}

	@Test
	void whatIsNoLongerMeasuredGoesAndNewThingsGetIdsNeverUsed() throws IOException {
		String windowId = wall("A").getOpenings().getFirst().getId();
		SurveyImport.Result result = read(Surveys.HALL + """
				window,Hall,A,W2,10,30,20,20,,,
				window,Hall,B,W,10,30,20,20,,,
				box,Hall,A,,62,16,,,,,gang=1
				""");
		assertChanges(result, new SurveyChange(Kind.REMOVED, "Hall", "A / W"), new SurveyChange(Kind.ADDED, "Hall", "A / W2"),
				new SurveyChange(Kind.ADDED, "Hall", "B / W"), new SurveyChange(Kind.CHANGED, "Hall", "A / box"),
				new SurveyChange(Kind.REMOVED, "Hall", "A / box"), new SurveyChange(Kind.REMOVED, "Hall", "across"),
				new SurveyChange(Kind.REMOVED, "Hall", "B / corner"));
		assertNull(wall("B").getCorner());
		assertNotEquals(windowId, wall("B").getOpenings().getFirst().getId());
		Set<String> ids = new HashSet<>();
		rooms.getFirst().eAllContents().forEachRemaining(each -> {
			if (each instanceof Element element) {
				assertTrue(ids.add(element.getId()), element.getId());
			}
		});
		assertEquals(Surveys.in("36"), rooms.getFirst().getBrief().getRail());
		assertEquals("green", rooms.getFirst().getPaints().getFirst().getName());
	}

	@Test
	void theDesignersWorkStaysUnlessTheSurveyDecidesOtherwise() throws IOException {
		PlacedFrame frame = WainscribeFactory.eINSTANCE.createPlacedFrame();
		wall("A").getPlacedFrames().add(frame);
		Fixture shelf = WainscribeFactory.eINSTANCE.createFixture();
		shelf.setName("new shelf");
		shelf.setPlanned(Boolean.TRUE);
		wall("A").getFixtures().add(shelf);
		read(Surveys.HALL + CONTENTS);
		assertEquals(List.of(frame), wall("A").getPlacedFrames());
		assertEquals(List.of(shelf), wall("A").getFixtures());
		read(Surveys.HALL + CONTENTS + "frame,Hall,B,F,10,10,20,20,,,\n");
		assertEquals(List.of(), wall("A").getPlacedFrames());
		assertEquals("F", wall("B").getPlacedFrames().getFirst().getName());
	}

	@Test
	void wallsTakeTheOrderOfTheSurveyAndDiagonalsStayOnThem() throws IOException {
		Wall first = wall("A");
		SurveyImport.Result result = read("""
				room,Hall,,,,,,96,,,use=hall
				wall,Hall,D,,,,96,,,,
				wall,Hall,A,,,,120,,,,
				wall,Hall,E,,,,96,,,,
				wall,Hall,C,,,,120,,,,
				diagonal,Hall,,across,,,153,,,,from=A;to=C
				diagonal,Hall,,other,,,153,,,,from=E;to=D
				""");
		assertTrue(result.changes().contains(new SurveyChange(Kind.REMOVED, "Hall", "B")));
		assertEquals(List.of("D", "A", "E", "C"), rooms.getFirst().getWalls().stream().map(Wall::getName).toList());
		assertSame(first, wall("A"));
		assertSame(first, rooms.getFirst().getDiagonals().get(0).getFrom());
		assertSame(wall("E"), rooms.getFirst().getDiagonals().get(1).getFrom());
		assertSame(wall("D"), rooms.getFirst().getDiagonals().get(1).getTo());
	}

	@Test
	void otherRoomsStayUntouchedAndNewOnesGoLast() throws IOException {
		Room hall = rooms.getFirst();
		Room before = EcoreUtil.copy(hall);
		SurveyImport.Result result = read("room,Den,,,,,,96,,,\nwall,Den,A,,,,120,,,,\n");
		assertEquals(List.of("Hall", "Den"), result.rooms().stream().map(Room::getName).toList());
		assertEquals(List.of("Den"), result.touched().stream().map(Room::getName).toList());
		assertChanges(result, new SurveyChange(Kind.ADDED, "Den", ""));
		assertTrue(EcoreUtil.equals(before, hall));
		assertEquals("Client", home.getName());
		assertEquals("US", home.getCountry());
	}

	@Test
	void aSurveyWithErrorsIsNotTaken() throws IOException {
		Survey bad = Surveys.read("wall,Hall,A,,,,-1,,,,\n");
		assertThrows(IllegalArgumentException.class, () -> survey.into(bad, home, rooms));
	}

	@Test
	void theDemoComesInTwiceWithoutChange() throws Exception {
		Path demo = Path.of("..", "..", "releng", "demo", "schoolhouse.csv");
		Home school = WainscribeFactory.eINSTANCE.createHome();
		List<Room> all = survey.into(Surveys.reader().read(demo).orRefuse(), school, List.of()).rooms();
		assertEquals(4, all.size());
		assertEquals(List.of(), survey.into(Surveys.reader().read(demo).orRefuse(), school, all).changes());
	}
}
