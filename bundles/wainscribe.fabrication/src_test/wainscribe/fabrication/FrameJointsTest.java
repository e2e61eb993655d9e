// SPDX-License-Identifier: EPL-2.0
package wainscribe.fabrication;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static wainscribe.fabrication.SampleRoom.frame;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

import wainscribe.layout.MouldingSection;
import wainscribe.model.Material;
import wainscribe.model.length.Length;
import wainscribe.model.length.LengthUnit;

/**
 * Frames put together again from nothing but the cut pieces: each is drawn as a quadrilateral from its long-point length, its
 * face and the saw's settings, then laid with its long edge along a side of the polygon that the long edges alone close.
 */
class FrameJointsTest {

	private record At(double x, double y) {

		At plus(At direction, double distance) {
			return new At(x + direction.x * distance, y + direction.y * distance);
		}

		double distance(At other) {
			return Math.hypot(x - other.x, y - other.y);
		}
	}

	/** A cut side laid down: both ends of its inner edge. */
	private record Laid(At innerStart, At innerEnd) {
	}

	private static List<Piece> sides(int face, double step, int width, int height, int rise) {
		MouldingSection section = new MouldingSection("", Length.ofMillimetres(face), Length.ofMillimetres(13));
		return new FrameMembers(section, Material.MDF, new PieceNotes(LengthUnit.MILLIMETRE, Optional.empty()),
				new Saw(BigDecimal.valueOf(step))).of("A", frame("A1", 0, 0, width, height, rise));
	}

	private static Laid lay(Piece piece, At from, At to, int inwards) {
		double length = piece.longPoint().approximateMillimetres();
		assertEquals(length, from.distance(to), 0.001, "the long edges close the outline");
		At along = new At((to.x - from.x) / length, (to.y - from.y) / length);
		At inner = new At(-along.y * inwards, along.x * inwards);
		double face = piece.section().face().approximateMillimetres();
		double start = face * Math.tan(Math.toRadians(piece.start().setting().turn().doubleValue()));
		double end = face * Math.tan(Math.toRadians(piece.end().setting().turn().doubleValue()));
		return new Laid(from.plus(along, start).plus(inner, face), to.plus(along, -end).plus(inner, face));
	}

	/** Law: the long edges are the frame's outline, and no joint is further open at its inner point than is stated. */
	@Property(tries = 300)
	void jointsCloseWithinTheStatedError(@ForAll @IntRange(min = 200, max = 2000) int width,
			@ForAll @IntRange(min = 200, max = 2000) int height, @ForAll @IntRange(min = -1500, max = 1500) int rise,
			@ForAll @IntRange(min = 15, max = 90) int face, @ForAll boolean fine) {
		List<Piece> sides = sides(face, fine ? 0.1 : 0.5, width, height, rise);
		At lowerLeft = new At(0, 0);
		At lowerRight = new At(width, rise);
		At upperRight = new At(width, rise + height);
		At upperLeft = new At(0, height);
		Laid top = lay(sides.get(0), upperLeft, upperRight, -1);
		Laid bottom = lay(sides.get(1), lowerLeft, lowerRight, 1);
		Laid left = lay(sides.get(2), lowerLeft, upperLeft, -1);
		Laid right = lay(sides.get(3), lowerRight, upperRight, 1);
		close(bottom.innerStart(), left.innerStart(), sides.get(1).start());
		close(bottom.innerEnd(), right.innerStart(), sides.get(1).end());
		close(top.innerStart(), left.innerEnd(), sides.get(0).start());
		close(top.innerEnd(), right.innerEnd(), sides.get(0).end());
	}

	/** Square to the joint the inner points are apart by what they are off each other along both pieces. */
	private static void close(At one, At other, PieceEnd end) {
		double stated = end.setting().opening().doubleValue();
		assertTrue(one.distance(other) <= stated + 0.002, () -> one.distance(other) + " open, stated " + end);
	}

	/** A joint that the scale meets exactly is said to be closed; one it does not meet is never said to be. */
	@Property(tries = 100)
	void whatIsStatedIsNotMuchMoreThanWhatThereIs(@ForAll @IntRange(min = 200, max = 2000) int width,
			@ForAll @IntRange(min = -1500, max = 1500) int rise) {
		PieceEnd end = sides(32, 0.5, width, 500, rise).get(1).start();
		double exact = Math.toRadians(end.turn().doubleValue());
		double set = Math.toRadians(end.setting().turn().doubleValue());
		double across = 2 * 32 * Math.abs(Math.tan(exact) - Math.tan(set)) * Math.cos(exact);
		assertEquals(across, end.setting().opening().doubleValue(), 0.0101);
	}
}
