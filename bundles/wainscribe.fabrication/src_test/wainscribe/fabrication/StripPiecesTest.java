// SPDX-License-Identifier: EPL-2.0
package wainscribe.fabrication;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static wainscribe.fabrication.SampleRoom.mm;

import java.math.BigDecimal;
import java.util.List;

import org.junit.jupiter.api.Test;

import wainscribe.layout.PatternRoomDesigner;
import wainscribe.layout.RoomDesign;
import wainscribe.layout.StripKind;
import wainscribe.layout.StripOutline;
import wainscribe.layout.pattern.BuiltInPatterns;
import wainscribe.model.WainscribeFactory;
import wainscribe.profile.BuiltInProfiles;
import wainscribe.profile.ProfileCatalogue;

/** Pieces of strips, of rooms that were really laid out. */
class StripPiecesTest {

	private final ProfileCatalogue profiles = BuiltInProfiles.catalogue();

	private RoomDesign design(String pattern, int floorRight) {
		SampleRoom sample = new SampleRoom(2700);
		sample.wall("north", 4200, "90");
		sample.room.getWalls().getFirst().setFloorRight(mm(floorRight));
		sample.room.setOpen(Boolean.TRUE);
		sample.room.setBrief(WainscribeFactory.eINSTANCE.createBrief());
		sample.room.getBrief().setPattern(pattern);
		return new PatternRoomDesigner(BuiltInPatterns.catalogue(), profiles).design(sample.home, sample.room);
	}

	private List<Piece> pieces(RoomDesign design) {
		return new CutLists(profiles).of(design).pieces().stream().filter(piece -> piece.kind() == PieceKind.STRIP).toList();
	}

	@Test
	void everyStripIsOnePieceOfItsLengthCutSquare() {
		for (String pattern : List.of("battens-under-rail", "boards-and-rails")) {
			RoomDesign design = design(pattern, 0);
			List<StripOutline> strips = design.layout().strips().toList();
			List<Piece> pieces = pieces(design);
			assertTrue(strips.size() > 5);
			assertEquals(strips.stream().map(StripOutline::id).toList(), pieces.stream().map(Piece::label).toList());
			for (int i = 0; i < pieces.size(); i++) {
				Piece piece = pieces.get(i);
				StripOutline strip = strips.get(i);
				assertEquals(strip.kind() == StripKind.RAIL ? strip.width() : strip.height(), piece.longPoint());
				assertEquals(piece.longPoint(), piece.shortPoint());
				assertEquals(BigDecimal.ZERO, piece.start().turn());
				assertEquals(BigDecimal.ZERO, piece.end().turn());
				assertEquals(LongSide.NONE, piece.end().longSide());
			}
		}
	}

	@Test
	void onAStairTheEndsFollowThePitch() {
		RoomDesign design = design("battens-under-rail", 2100);
		Piece first = pieces(design).getFirst();
		StripOutline strip = design.layout().strips().findFirst().orElseThrow();
		assertEquals(0, first.start().turn().subtract(new BigDecimal("26.5651")).signum(), "derived: atan(2100 / 4200)");
		assertEquals(LongSide.LEFT_EDGE, first.start().longSide(), "the lower corner is the left one");
		assertEquals(LongSide.RIGHT_EDGE, first.end().longSide());
		assertEquals(strip.height().plus(mm(32)), first.longPoint(), "derived: 64 / 2 more than plumb");
		assertEquals(strip.height().minus(mm(32)), first.shortPoint());
	}

	@Test
	void aBoardAlongAStairHasPlumbEnds() {
		RoomDesign design = design("boards-and-rails", 2100);
		StripOutline rail = design.layout().strips().filter(strip -> strip.kind() == StripKind.RAIL).findFirst().orElseThrow();
		Piece piece = pieces(design).stream().filter(each -> each.label().equals(rail.id())).findFirst().orElseThrow();
		double edge = Math.hypot(rail.width().approximateMillimetres(), rail.rise().approximateMillimetres());
		assertEquals(edge + 64 * 0.5, piece.longPoint().approximateMillimetres(), 0.01, "derived: face x tan(pitch) beyond the edge");
		assertEquals(edge - 64 * 0.5, piece.shortPoint().approximateMillimetres(), 0.01);
		assertEquals(LongSide.LOWER_EDGE, piece.start().longSide());
	}
}
