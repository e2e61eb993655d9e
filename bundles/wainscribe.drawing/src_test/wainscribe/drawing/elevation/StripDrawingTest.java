// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing.elevation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import wainscribe.drawing.Bounds;
import wainscribe.drawing.Dimension;
import wainscribe.drawing.Drawing;
import wainscribe.drawing.Label;
import wainscribe.drawing.LayerName;
import wainscribe.drawing.Path;
import wainscribe.drawing.Role;
import wainscribe.drawing.SampleRoom;
import wainscribe.drawing.Subject;
import wainscribe.layout.PatternRoomDesigner;
import wainscribe.layout.RoomDesign;
import wainscribe.layout.StripOutline;
import wainscribe.layout.pattern.BuiltInPatterns;
import wainscribe.model.OpeningKind;
import wainscribe.model.WainscribeFactory;
import wainscribe.model.length.LengthUnit;
import wainscribe.profile.ProfileCatalogue;

/** Drawings of rooms laid out with strips. */
class StripDrawingTest {

	private final ProfileCatalogue profiles = new ProfileCatalogue(List.of());
	private final ElevationDrawing elevation = new ElevationDrawing(profiles);

	private RoomDesign design(SampleRoom room, String pattern) {
		room.room().setBrief(WainscribeFactory.eINSTANCE.createBrief());
		room.room().getBrief().setPattern(pattern);
		return new PatternRoomDesigner(BuiltInPatterns.catalogue(), profiles).design(room.home(), room.room());
	}

	@ParameterizedTest
	@ValueSource(strings = { "battens-under-rail", "boards-and-rails" })
	void everyStripIsDrawnInItsOutlineAndMarkedFromTheDatum(String pattern) {
		SampleRoom room = new SampleRoom(LengthUnit.MILLIMETRE, 4000, 2500);
		room.opening(OpeningKind.WINDOW, 1500, 500, 900, 1200);
		RoomDesign design = design(room, pattern);
		Drawing drawing = elevation.draw(design, room.wall(), ElevationOptions.of(room.home()));
		List<StripOutline> strips = design.layout().strips().toList();
		assertTrue(strips.size() > 6);
		for (StripOutline strip : strips) {
			Subject subject = Subject.strip(strip.id());
			Bounds outline = drawing.shapes(LayerName.STRIP).stream().map(Path.class::cast)
					.filter(path -> path.subject().equals(subject) && path.role() == Role.TRIM_EDGE).findFirst().orElseThrow().bounds();
			assertEquals(strip.x().approximateMillimetres(), outline.x0(), 1e-6);
			assertEquals(strip.right().approximateMillimetres(), outline.x1(), 1e-6);
			assertEquals(strip.top().approximateMillimetres(), outline.y1(), 1e-6);
			assertTrue(!strip.kind().isUpright() || strip.x().signum() == 0
					|| drawing.shapes(LayerName.DIMENSION).stream().filter(Dimension.class::isInstance).map(Dimension.class::cast).anyMatch(mark -> mark.to().equals(strip.x())),
					strip.id() + " has no mark");
		}
	}

	@ParameterizedTest
	@ValueSource(strings = { "battens-under-rail", "boards-and-rails" })
	void noNameCoversAnotherOrLeavesTheWall(String pattern) {
		for (int i = 0; i < 60; i++) {
			Random random = new Random(i);
			SampleRoom room = new SampleRoom(LengthUnit.INCH, 1200 + random.nextInt(6000), 2500);
			room.opening(OpeningKind.WINDOW, random.nextInt(4000), 500, 900, 1200).setName("window");
			RoomDesign design = design(room, pattern);
			Drawing drawing = elevation.draw(design, room.wall(), ElevationOptions.of(room.home()).withScale(10 + random.nextInt(40)));
			List<Label> names = drawing.shapes(LayerName.TEXT).stream().map(Label.class::cast).toList();
			for (Label name : names) {
				Bounds bounds = name.bounds().grown(-1e-6);
				assertTrue(name.role() == Role.TITLE || bounds.x0() >= 0 && bounds.x1() <= room.wall().getLength().approximateMillimetres(), name.text());
				names.stream().filter(other -> other != name).forEach(other -> assertFalse(bounds.overlaps(other.bounds().grown(-1e-6))));
			}
		}
	}
}
