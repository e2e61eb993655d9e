// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing.elevation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

import org.junit.jupiter.api.Test;

import wainscribe.drawing.Bounds;
import wainscribe.drawing.Dimension;
import wainscribe.drawing.Drawing;
import wainscribe.drawing.Hits;
import wainscribe.drawing.LayerName;
import wainscribe.drawing.Path;
import wainscribe.drawing.Point;
import wainscribe.drawing.Role;
import wainscribe.drawing.SampleRoom;
import wainscribe.drawing.Subject;
import wainscribe.model.BoxType;
import wainscribe.model.FixtureType;
import wainscribe.model.OpeningKind;
import wainscribe.model.length.LengthUnit;
import wainscribe.profile.BuiltInProfiles;
import wainscribe.profile.ProfileCatalogue;

class ElevationDrawingTest {

	private final ElevationDrawing elevation = new ElevationDrawing(new ProfileCatalogue(new BuiltInProfiles().profiles()));

	private Drawing draw(SampleRoom room) {
		return elevation.draw(room.design(), room.wall(), ElevationOptions.of(room.home()));
	}

	private static Set<String> texts(Drawing drawing, Dimension.Axis axis) {
		return drawing.shapes(LayerName.DIMENSION).stream().filter(Dimension.class::isInstance).map(Dimension.class::cast)
				.filter(dimension -> dimension.axis() == axis).map(dimension -> dimension.label().text())
				.collect(Collectors.toSet());
	}

	@Test
	void aFrameIsFourMitredSidesOfItsMoulding() {
		Drawing drawing = draw(new SampleRoom(LengthUnit.MILLIMETRE, 3000, 2500).frame(100, 200, 600, 500));
		List<Path> frame = drawing.shapes(LayerName.FRAME).stream().map(Path.class::cast).toList();
		assertTrue(frame.stream().allMatch(path -> path.subject().equals(Subject.frame("A1"))));
		assertEquals(new Bounds(100, 200, 700, 700), frame.getLast().bounds());
		assertTrue(frame.stream().anyMatch(path -> path.role() == Role.FIELD
				&& path.bounds().equals(new Bounds(135, 235, 665, 665))), "the field lies a moulding's width inside");
		assertTrue(frame.stream().anyMatch(
				path -> path.role() == Role.TRIM_ARRIS && path.equals(Path.line(Subject.frame("A1"), Role.TRIM_ARRIS,
						new Point(100, 200), new Point(135, 235)))), "a mitre joins the corners");
	}

	@Test
	void lightFromTheUpperLeftGivesEverySideItsShade() {
		Relief.Facet rising = new Relief.Facet(0, 0.5, -0.9);
		assertEquals(Role.RELIEF_BRIGHT, Relief.shade(rising, new Point(0, 1)));
		assertEquals(Role.RELIEF_BRIGHT, Relief.shade(rising, new Point(-1, 0)));
		assertEquals(Role.RELIEF_DEEP, Relief.shade(rising, new Point(0, -1)));
		assertEquals(Role.RELIEF_DEEP, Relief.shade(rising, new Point(1, 0)));
		assertEquals(Role.RELIEF_PLAIN, Relief.shade(new Relief.Facet(0, 1, 0), new Point(0, 1)));
	}

	@Test
	void dimensionsReadLikeACarpenters() {
		SampleRoom metric = new SampleRoom(LengthUnit.MILLIMETRE, 1842, 2500).frame(80, 200, 400, 500);
		assertEquals(Set.of("0", "80", "480", "1842"), texts(draw(metric), Dimension.Axis.LEVEL));
		assertEquals(Set.of("0", "120", "200", "700", "840", "900", "2500"), texts(draw(metric), Dimension.Axis.PLUMB));
		SampleRoom inch = new SampleRoom(LengthUnit.INCH, 1867, 2500);
		assertTrue(texts(draw(inch), Dimension.Axis.LEVEL).contains("6' 1 1/2\""), "1867 mm is 73.504 in");
	}

	@Test
	void openingsAreMeasuredFromJambToJamb() {
		SampleRoom room = new SampleRoom(LengthUnit.MILLIMETRE, 4000, 2500);
		room.opening(OpeningKind.WINDOW, 1000, 900, 1200, 1100);
		assertEquals(Set.of("1000", "1200", "1800"), texts(draw(room), Dimension.Axis.LEVEL));
		assertTrue(texts(draw(room), Dimension.Axis.PLUMB).containsAll(Set.of("2000", "900")));
	}

	@Test
	void railAndBaseStopAtCasings() {
		SampleRoom room = new SampleRoom(LengthUnit.MILLIMETRE, 4000, 2500);
		room.opening(OpeningKind.DOOR, 1000, 0, 800, 2000);
		List<Bounds> base = draw(room).shapes(LayerName.BASE).stream().filter(shape -> shape.role() == Role.TRIM_EDGE)
				.map(shape -> shape.bounds()).toList();
		assertEquals(List.of(new Bounds(0, 0, 930, 120), new Bounds(1870, 0, 4000, 120)), base);
	}

	@Test
	void everyFixtureFillsItsMeasuredOutline() {
		for (FixtureType type : FixtureType.values()) {
			SampleRoom room = new SampleRoom(LengthUnit.MILLIMETRE, 3000, 2500);
			room.fixture(type, 500, 300, 640, 480);
			List<Path> paths = draw(room).shapes(LayerName.FIXTURE).stream().map(Path.class::cast).toList();
			Bounds bounds = paths.stream().map(Path::bounds).reduce(Bounds::union).orElseThrow();
			Bounds outline = new Bounds(500, 300, 1140, 780);
			assertTrue(outline.grown(0.01).contains(bounds), () -> type + " leaves its outline: " + bounds);
			assertTrue(bounds.width() > 0.6 * outline.width() && bounds.height() > 0.9 * outline.height(),
					() -> type + " does not fill its outline: " + bounds);
			assertTrue(paths.stream().allMatch(path -> path.subject().equals(Subject.element("fixture-0"))));
		}
	}

	@Test
	void aPointFindsWhatItShows() {
		SampleRoom room = new SampleRoom(LengthUnit.MILLIMETRE, 3000, 2500).frame(100, 200, 600, 500);
		room.opening(OpeningKind.DOOR, 2000, 0, 800, 2000);
		Hits hits = new Hits(draw(room));
		assertEquals(List.of(Subject.frame("A1"), Subject.of(Subject.Kind.WALL)), hits.at(new Point(110, 210), 1));
		assertEquals(Subject.element("opening-0"), hits.at(new Point(2400, 1000), 1).getFirst());
		assertEquals(Subject.of(Subject.Kind.RAIL), hits.at(new Point(1000, 870), 1).getFirst());
		assertTrue(hits.at(new Point(-3000, 9000), 1).isEmpty());
	}

	@Test
	void onStairsThingsStandOnTheFloorLineUnderThem() {
		SampleRoom room = new SampleRoom(LengthUnit.MILLIMETRE, 4000, 2500);
		room.wall().setFloorRight(SampleRoom.mm(2000));
		room.box(BoxType.SWITCH, 2000, 1100, 70, 114);
		room.fixture(FixtureType.HANDRAIL, 0, 900, 4000, 50);
		Drawing drawing = draw(room);
		Bounds plate = drawing.shapes(LayerName.BOX).getFirst().bounds();
		assertEquals(1000 + 1100, plate.y0(), 1e-6, "half way up the floor has climbed a metre");
		Bounds handrail = drawing.shapes(LayerName.FIXTURE).getFirst().bounds();
		assertEquals(new Bounds(0, 900, 4000, 2950), handrail, "a handrail follows the stairs");
	}

	@Test
	void layersCanBeLeftOut() {
		SampleRoom room = new SampleRoom(LengthUnit.MILLIMETRE, 3000, 2500).frame(100, 200, 600, 500);
		Drawing drawing = elevation.draw(room.design(), room.wall(),
				ElevationOptions.of(room.home()).withLayers(EnumSet.of(LayerName.WALL, LayerName.FRAME)));
		assertEquals(List.of(LayerName.WALL, LayerName.FRAME), drawing.layers().stream().map(layer -> layer.name()).toList());
		assertFalse(drawing.shapes().toList().isEmpty());
	}

	@Test
	void theSameDesignGivesAnEqualDrawing() {
		SampleRoom room = new SampleRoom(LengthUnit.INCH, 3000, 2500).frame(100, 200, 600, 500);
		room.fixture(FixtureType.TOILET, 1500, 0, 380, 780);
		assertEquals(draw(room), draw(room));
	}
}
