// SPDX-License-Identifier: EPL-2.0
package wainscribe.fabrication;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static wainscribe.fabrication.SampleRoom.mm;

import java.util.List;

import org.junit.jupiter.api.Test;

import wainscribe.layout.RailBand;
import wainscribe.model.Fixture;
import wainscribe.model.FixtureType;
import wainscribe.model.Support;
import wainscribe.model.WainscribeFactory;
import wainscribe.profile.BuiltInProfiles;

class GlassPiecesTest {

	private final SampleRoom sample = new SampleRoom(2400);
	private final Fixture mirror = WainscribeFactory.eINSTANCE.createFixture();

	GlassPiecesTest() {
		sample.wall("A", 3000, "90");
		mirror.setType(FixtureType.MIRROR);
		mirror.setName("glass");
		mirror.setX(mm(1000));
		mirror.setY(mm(1000));
		mirror.setWidth(mm(600));
		mirror.setHeight(mm(900));
		mirror.setDepth(mm(4));
		mirror.setFramed(true);
		sample.room.getWalls().getFirst().getFixtures().add(mirror);
	}

	private List<Piece> pieces() {
		return new CutLists(BuiltInProfiles.catalogue()).of(sample.design()).pieces();
	}

	/** By hand: glass 600 x 900, lap 10 on each side: sight 580 x 880; face 32: outer 644 x 944 (common practice). */
	@Test
	void theFrameLapsOverTheGlassOnAllSides() {
		List<Piece> pieces = pieces();
		assertEquals(List.of("A/glass/top", "A/glass/bottom", "A/glass/left", "A/glass/right"),
				pieces.stream().map(Piece::label).toList());
		assertEquals(List.of(mm(644), mm(644), mm(944), mm(944)), pieces.stream().map(Piece::longPoint).toList());
		assertEquals(List.of(mm(580), mm(580), mm(880), mm(880)), pieces.stream().map(Piece::shortPoint).toList());
		assertEquals(mm(1000 - 22), pieces.getFirst().x0());
		assertEquals(Joint.FRAME_MITRE, pieces.getFirst().start().joint());
		String note = pieces.getFirst().notes().getFirst();
		assertTrue(note.contains("13 mm wide and 4 mm deep"), note);
	}

	@Test
	void decisionsOfTheBriefHoldAndASmallFaceIsNamed() {
		sample.brief().setGlassLap(mm(25));
		sample.brief().setGlassClearance(mm(7));
		mirror.setSupport(Support.CLIPS);
		Piece top = pieces().getFirst();
		assertEquals(mm(600 - 50 + 64), top.longPoint());
		assertTrue(top.notes().stream().anyMatch(note -> note.contains("notch")), top.notes()::toString);
		assertTrue(top.notes().stream().anyMatch(note -> note.contains("does not reach the wall")), top.notes()::toString);
	}

	@Test
	void onlyAMirrorThatIsToBeFramedIsFramed() {
		mirror.setFramed(null);
		assertEquals(List.of(), pieces());
		mirror.setFramed(true);
		mirror.setType(FixtureType.ART);
		assertEquals(List.of(), pieces());
	}

	@Test
	void theRailStopsAtTheFrameNotAtTheGlass() {
		sample.rail = new RailBand(mm(1040), mm(1100), mm(20));
		Piece rail = pieces().stream().filter(piece -> piece.kind() == PieceKind.RAIL && !piece.isReturn()).findFirst().orElseThrow();
		assertEquals(mm(1000 - 22), rail.x1());
		assertEquals(Joint.BUTT_TO_FIXTURE, rail.end().joint());
	}
}
