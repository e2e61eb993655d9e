// SPDX-License-Identifier: EPL-2.0
package wainscribe.fabrication;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static wainscribe.fabrication.SampleRoom.frame;
import static wainscribe.fabrication.SampleRoom.mm;

import java.math.BigDecimal;
import java.util.List;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import wainscribe.layout.FrameOutline;
import wainscribe.layout.MouldingSection;
import wainscribe.model.Material;
import wainscribe.profile.BuiltInProfiles;

class FramePiecesTest {

	private final CutLists cutLists = new CutLists(BuiltInProfiles.catalogue());

	private List<Piece> pieces(FrameOutline frame) {
		SampleRoom sample = new SampleRoom(2400);
		sample.wall("A", 3000, "90", frame);
		return cutLists.of(sample.design()).pieces();
	}

	@Test
	void aLevelFrameGivesFourSidesMitredAtFortyFive() {
		List<Piece> pieces = pieces(frame("A1", 80, 220, 500, 600, 0));
		assertEquals(List.of("A1/top", "A1/bottom", "A1/left", "A1/right"), pieces.stream().map(Piece::label).toList());
		assertEquals(List.of(mm(500), mm(500), mm(600), mm(600)), pieces.stream().map(Piece::longPoint).toList());
		assertEquals(List.of(mm(436), mm(436), mm(536), mm(536)), pieces.stream().map(Piece::shortPoint).toList());
		for (Piece piece : pieces) {
			assertEquals(new PieceEnd(Joint.FRAME_MITRE, BigDecimal.valueOf(45), BigDecimal.ZERO, LongSide.OUTER_EDGE), piece.start());
			assertEquals(piece.start(), piece.end());
			assertEquals("ogee-32", piece.profile());
			assertEquals(Lie.FLAT, piece.lie());
		}
	}

	@Test
	void withoutAProfileThePieceIsNamedByKindAndMeasures() {
		SampleRoom sample = new SampleRoom(2400);
		sample.frame = new MouldingSection("", mm(32), mm(16));
		sample.wall("A", 3000, "90", frame("A1", 80, 220, 500, 600, 0));
		assertEquals("frame 32 mm x 16 mm", cutLists.of(sample.design()).pieces().getFirst().profile());
	}

	/**
	 * Raked frames on whole-number slopes: raked side and the two saw settings (at the acute corner 90 less its half, at the
	 * obtuse the same); derived, recomputed by an independent program. Columns: rise, run, raked side, plumb side, settings.
	 */
	@ParameterizedTest
	@CsvSource({ "780, 1040, 1300, 400, 63.4349, 26.5651", "510, 680, 850, 350, 63.4349, 26.5651",
			"440, 1056, 1144, 444, 56.3099, 33.6901", "720, 1350, 1530, 470, 59.0362, 30.9638",
			"644, 2208, 2300, 500, 53.1301, 36.8699", "680, 714, 986, 426, 66.8014, 23.1986" })
	void aRakedFrameHasTwoSettings(int rise, int run, int raked, int plumb, double acute, double obtuse) {
		List<Piece> pieces = pieces(frame("S1", 0, 100, run, plumb, rise));
		Piece top = pieces.get(0);
		Piece bottom = pieces.get(1);
		Piece left = pieces.get(2);
		assertEquals(mm(raked), top.longPoint());
		assertEquals(mm(raked), bottom.longPoint());
		assertEquals(mm(plumb), left.longPoint());
		assertEquals(mm(plumb), pieces.get(3).longPoint());
		assertEquals(acute, bottom.start().turn().doubleValue(), 0.0001);
		assertEquals(obtuse, bottom.end().turn().doubleValue(), 0.0001);
		assertEquals(obtuse, top.start().turn().doubleValue(), 0.0001);
		assertEquals(acute, top.end().turn().doubleValue(), 0.0001);
		assertEquals(bottom.start(), left.start());
		assertEquals(top.start(), left.end());
	}

	/** Published pitches of stairs: the acute corner is 90 less the pitch; derived. */
	@Test
	void settingsBeyondMostSawsAreNamed() {
		List<Piece> pieces = pieces(frame("S1", 0, 100, 1040, 400, 780));
		assertTrue(pieces.get(1).notes().getFirst().contains("wedge"));
		assertTrue(pieces(frame("A1", 80, 220, 500, 600, 0)).getFirst().notes().isEmpty());
	}

	@Test
	void aSideLongerThanTheStockIsNamed() {
		SampleRoom sample = new SampleRoom(2400);
		sample.stock = List.of(mm(2400), mm(1800));
		sample.wall("A", 3000, "90", frame("A1", 80, 220, 2500, 600, 0));
		List<Piece> pieces = cutLists.of(sample.design()).pieces();
		assertTrue(pieces.get(0).notes().getFirst().contains("2400 mm"));
		assertTrue(pieces.get(2).notes().isEmpty());
	}

	/** Law: the inner edges of four sides close a frame inset by the face on all sides. */
	@Property(tries = 200)
	void innerEdgesCloseTheField(@ForAll @IntRange(min = 200, max = 2000) int width,
			@ForAll @IntRange(min = 200, max = 2000) int height, @ForAll @IntRange(min = -900, max = 900) int rise) {
		MouldingSection section = new MouldingSection("", mm(32), mm(13));
		List<Piece> sides = new FrameMembers(section, Material.MDF, new PieceNotes(wainscribe.model.length.LengthUnit.MILLIMETRE,
				java.util.Optional.empty()), new Saw(new BigDecimal("0.5"))).of("A", frame("A1", 0, 0, width, height, rise));
		double pitch = Math.atan2(rise, width);
		double innerRun = sides.get(1).shortPoint().approximateMillimetres() * Math.cos(pitch);
		double innerPlumb = sides.get(2).shortPoint().approximateMillimetres();
		assertEquals(width - 2 * 32, innerRun, 0.001);
		assertEquals(height - 2 * 32 / Math.cos(pitch), innerPlumb, 0.001);
	}
}
