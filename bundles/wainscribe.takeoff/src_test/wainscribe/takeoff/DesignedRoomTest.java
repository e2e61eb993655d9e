// SPDX-License-Identifier: EPL-2.0
package wainscribe.takeoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;

import org.junit.jupiter.api.Test;

import wainscribe.fabrication.CutLists;
import wainscribe.fabrication.PieceKind;
import wainscribe.layout.PatternRoomDesigner;
import wainscribe.layout.RoomDesign;
import wainscribe.layout.pattern.BuiltInPatterns;
import wainscribe.model.Surface;
import wainscribe.model.length.Length;
import wainscribe.model.length.LengthUnit;
import wainscribe.profile.BuiltInProfiles;
import wainscribe.profile.ProfileCatalogue;

/** A takeoff of a room that was really laid out, and of the demo home's price list. */
class DesignedRoomTest {

	private final ProfileCatalogue profiles = BuiltInProfiles.catalogue();

	private static SampleRoom room() {
		SampleRoom sample = new SampleRoom(2700);
		sample.wall("north", 4200, "90");
		sample.wall("east", 3100, "90");
		sample.wall("south", 4200, "90");
		sample.wall("west", 3100, "90");
		SampleRoom.door(sample.room.getWalls().get(1), 600, 850, 2040, 70);
		sample.paint("Chalk", Surface.CEILING);
		return sample;
	}

	@Test
	void mouldingsAddUpToTheCutList() {
		SampleRoom sample = room();
		RoomDesign design = new PatternRoomDesigner(BuiltInPatterns.catalogue(), profiles).design(sample.home, sample.room);
		HomeTakeoff takeoff = new Takeoffs(profiles).of(sample.home, List.of(design));
		Length frames = new CutLists(profiles).of(design).pieces().stream().filter(piece -> piece.kind() == PieceKind.FRAME)
				.map(piece -> piece.longPoint()).reduce(Length.ZERO, Length::plus);
		TakeoffLine line = takeoff.lines().stream().filter(candidate -> candidate.key().startsWith("frame ")).findFirst().orElseThrow();
		double expected = frames.approximateMillimetres() / 1000 * 1.15;
		assertEquals(expected, line.quantity().doubleValue(), 0.001);
		assertEquals(takeoff.lines(), takeoff.rooms().getFirst().lines());
		TakeoffLine ceiling = takeoff.lines().stream().filter(candidate -> candidate.key().equals("Chalk")).findFirst().orElseThrow();
		assertEquals("Reading room: floor plan 13.02 m2; 13.02 m2 x 2 coats / 9 m2/L = 2.89 L; + 0.50 L touch-up paint = 3.39 L",
				ceiling.formula());
	}

	@Test
	void theDemoHomesPriceListIsSound() throws Exception {
		PriceList list = new PriceListReader(LengthUnit.INCH).read(Path.of("../../releng/demo/prices.csv"));
		assertFalse(list.rows().isEmpty());
		for (PriceRow row : list.rows()) {
			assertTrue(row.amount().compareTo(BigDecimal.ZERO) > 0, row.item());
		}
	}
}
