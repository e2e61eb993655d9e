// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing.elevation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

import org.junit.jupiter.api.Test;

import wainscribe.drawing.Bounds;
import wainscribe.drawing.Drawing;
import wainscribe.drawing.Label;
import wainscribe.drawing.LayerName;
import wainscribe.drawing.SampleRoom;
import wainscribe.drawing.Subject;
import wainscribe.model.Fixture;
import wainscribe.model.FixtureType;
import wainscribe.model.length.LengthUnit;
import wainscribe.profile.ProfileCatalogue;

class PieceLabelsTest {

	private final ElevationDrawing elevation = new ElevationDrawing(new ProfileCatalogue(List.of()));
	private final SampleRoom room = new SampleRoom(LengthUnit.MILLIMETRE, 4000, 2400);

	private Drawing draw() {
		return elevation.draw(room.design(), room.wall(), ElevationOptions.of(room.home()));
	}

	private Map<String, Label> labels() {
		return draw().shapes(LayerName.PIECE).stream().map(Label.class::cast).collect(Collectors.toMap(Label::text, label -> label));
	}

	@Test
	void aRailCarriesItsLabelAndAFrameOneAlongEachSide() {
		room.rail(900);
		room.frame(200, 250, 900, 500);
		Map<String, Label> labels = labels();
		Label rail = labels.get("rail");
		assertTrue(rail.bounds().y0() > 840 && rail.bounds().y1() < 900, rail::toString);
		assertEquals(Subject.of(Subject.Kind.RAIL), rail.subject());
		List<String> sides = labels.keySet().stream().filter(text -> text.contains("/")).map(text -> text.substring(text.indexOf('/')))
				.sorted().toList();
		assertEquals(List.of("/bottom", "/left", "/right", "/top"), sides);
		Bounds frame = new Bounds(200, 250, 1100, 750);
		labels.values().stream().filter(label -> label.text().contains("/"))
				.forEach(label -> assertTrue(frame.contains(label.bounds()), label::toString));
	}

	@Test
	void aFramedMirrorIsDrawnOverItsGlassAndItsSidesCarryLabels() {
		Fixture mirror = room.fixture(FixtureType.MIRROR, 1000, 1000, 600, 900);
		mirror.setName("glass");
		Bounds bare = glass(draw());
		mirror.setFramed(true);
		Bounds framed = glass(draw());
		double face = room.design().brief().frame().face().approximateMillimetres();
		assertEquals(bare.width() + 2 * (face - 10), framed.width(), 0.001);
		assertEquals(bare.height() + 2 * (face - 10), framed.height(), 0.001);
		assertTrue(labels().keySet().containsAll(List.of("glass/top", "glass/bottom", "glass/left", "glass/right")),
				labels().keySet()::toString);
	}

	private static Bounds glass(Drawing drawing) {
		return drawing.shapes(LayerName.FIXTURE).stream().map(shape -> shape.bounds()).reduce(Bounds::union).orElseThrow();
	}

	@Test
	void theLayerCanBeLeftOut() {
		room.rail(900);
		ElevationOptions options = ElevationOptions.of(room.home()).withLayers(EnumSet.complementOf(EnumSet.of(LayerName.PIECE)));
		assertTrue(elevation.draw(room.design(), room.wall(), options).shapes(LayerName.PIECE).isEmpty());
	}
}
