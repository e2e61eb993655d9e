// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing.elevation;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import java.util.stream.Stream;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

import wainscribe.drawing.Bounds;
import wainscribe.drawing.Dimension;
import wainscribe.drawing.Drawing;
import wainscribe.drawing.Label;
import wainscribe.drawing.LayerName;
import wainscribe.drawing.SampleRoom;
import wainscribe.drawing.Shape;
import wainscribe.model.BoxType;
import wainscribe.model.FixtureType;
import wainscribe.model.OpeningKind;
import wainscribe.model.length.Length;
import wainscribe.model.length.LengthUnit;
import wainscribe.profile.ProfileCatalogue;

/** No text of an elevation covers another, however crowded the wall. */
class TextsApartTest {

	private static final double ROUNDING = 1e-6;

	private final ElevationDrawing elevation = new ElevationDrawing(new ProfileCatalogue(List.of()));

	@Property(tries = 300)
	void noTextCoversAnother(@ForAll long seed) {
		Random random = new Random(seed);
		SampleRoom room = randomRoom(random);
		double scale = List.of(10.0, 20.0, 24.0, 50.0).get(random.nextInt(4));
		Drawing drawing = elevation.draw(room.design(), room.wall(), ElevationOptions.of(room.home()).withScale(scale));
		List<Label> labels = drawing.shapes().flatMap(TextsApartTest::labels).toList();
		assertFalse(drawing.shapes(LayerName.DIMENSION).isEmpty());
		for (int i = 0; i < labels.size(); i++) {
			Bounds one = labels.get(i).bounds().grown(-ROUNDING);
			assertTrue(drawing.extent().contains(one), () -> "outside: " + one);
			for (int j = i + 1; j < labels.size(); j++) {
				Label first = labels.get(i);
				Label second = labels.get(j);
				assertFalse(one.overlaps(second.bounds().grown(-ROUNDING)), () -> first + " covers " + second);
			}
		}
	}

	private static Stream<Label> labels(Shape shape) {
		return switch (shape) {
			case Label label -> Stream.of(label);
			case Dimension dimension -> Stream.of(dimension.label());
			default -> Stream.empty();
		};
	}

	private static SampleRoom randomRoom(Random random) {
		long length = 300 + random.nextInt(9000);
		long height = 1800 + random.nextInt(2000);
		SampleRoom room = new SampleRoom(random.nextBoolean() ? LengthUnit.INCH : LengthUnit.MILLIMETRE, length, height);
		room.rail(400 + random.nextInt(1000));
		if (random.nextInt(3) == 0) {
			room.wall().setFloorRight(Length.ofMillimetres(random.nextInt(3000) - 1000));
			room.wall().setHeightRight(Length.ofMillimetres(500 + random.nextInt(3000)));
		}
		for (int i = random.nextInt(12); i > 0; i--) {
			room.frame(random.nextInt((int) length), 120 + random.nextInt(900), 20 + random.nextInt(600),
					20 + random.nextInt(600));
		}
		for (int i = random.nextInt(5); i > 0; i--) {
			OpeningKind kind = OpeningKind.values()[random.nextInt(2)];
			room.opening(kind, random.nextInt((int) length), kind == OpeningKind.DOOR ? 0 : random.nextInt(1200),
					1 + random.nextInt(1500), 1 + random.nextInt(2000)).setName("opening " + i);
		}
		for (int i = random.nextInt(6); i > 0; i--) {
			FixtureType type = FixtureType.values()[random.nextInt(FixtureType.values().length)];
			room.fixture(type, random.nextInt((int) length), random.nextInt(1500), 1 + random.nextInt(900),
					1 + random.nextInt(900)).setName(type.getLiteral());
		}
		for (int i = random.nextInt(4); i > 0; i--) {
			room.box(BoxType.values()[random.nextInt(BoxType.values().length)], random.nextInt((int) length),
					random.nextInt(1500), 70, 114);
		}
		return room;
	}
}
