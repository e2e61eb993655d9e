// SPDX-License-Identifier: EPL-2.0
package wainscribe.fabrication;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static wainscribe.fabrication.SampleRoom.mm;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

import org.junit.jupiter.api.Test;

import wainscribe.layout.FrameOutline;
import wainscribe.layout.PatternRoomDesigner;
import wainscribe.layout.RoomDesign;
import wainscribe.layout.pattern.BuiltInPatterns;
import wainscribe.model.TrimType;
import wainscribe.model.length.Length;
import wainscribe.profile.BuiltInProfiles;
import wainscribe.profile.ProfileCatalogue;

/** Cut lists of rooms that were really laid out. */
class DesignedRoomTest {

	private final ProfileCatalogue profiles = BuiltInProfiles.catalogue();

	private RoomDesign design(SampleRoom sample) {
		return new PatternRoomDesigner(BuiltInPatterns.catalogue(), profiles).design(sample.home, sample.room);
	}

	private static SampleRoom room() {
		SampleRoom sample = new SampleRoom(2700);
		sample.wall("north", 4200, "90");
		sample.wall("east", 3100, "91.5");
		sample.wall("south", 4200, "88.5");
		sample.wall("west", 3100, "90");
		SampleRoom.door(sample.room.getWalls().get(1), 600, 850, 2040, 70);
		SampleRoom.trim(sample.room.getWalls().get(0), TrimType.BASE, true).setHeight(mm(140));
		return sample;
	}

	@Test
	void everyFrameGivesFourSidesOfItsPerimeter() {
		RoomDesign design = design(room());
		List<FrameOutline> frames = design.layout().frames().toList();
		assertFalse(frames.isEmpty());
		List<Piece> sides = new CutLists(profiles).of(design).pieces().stream().filter(piece -> piece.kind() == PieceKind.FRAME).toList();
		assertEquals(4 * frames.size(), sides.size());
		Length perimeters = frames.stream().map(frame -> frame.width().plus(frame.height()).times(2)).reduce(Length.ZERO, Length::plus);
		assertEquals(perimeters, sides.stream().map(Piece::longPoint).reduce(Length.ZERO, Length::plus));
	}

	@Test
	void railAndBaseCoverTheWallsBetweenTheDoorsCasings() {
		CutList list = new CutLists(profiles).of(design(room()));
		Length doorWithCasings = mm(850 + 2 * 70);
		assertEquals(mm(2 * 4200 + 2 * 3100).minus(doorWithCasings), covered(list, PieceKind.RAIL));
		assertEquals(mm(4200 + 2 * 3100).minus(doorWithCasings), covered(list, PieceKind.BASE));
	}

	private static Length covered(CutList list, PieceKind kind) {
		return list.pieces().stream().filter(piece -> piece.kind() == kind).map(piece -> piece.x1().minus(piece.x0()))
				.reduce(Length.ZERO, Length::plus);
	}

	@Test
	void labelsAreUniqueAndStable() {
		List<String> labels = new CutLists(profiles).of(design(room())).pieces().stream().map(Piece::label).toList();
		Set<String> distinct = new HashSet<>(labels);
		assertEquals(labels.size(), distinct.size());
		assertEquals(labels, new CutLists(profiles).of(design(room())).pieces().stream().map(Piece::label).toList());
		assertTrue(labels.contains("east/rail-1"));
	}
}
