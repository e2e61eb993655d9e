// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey.closure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

import wainscribe.model.Corner;
import wainscribe.model.Diagonal;
import wainscribe.model.Room;
import wainscribe.model.Wall;
import wainscribe.model.WainscribeFactory;
import wainscribe.model.length.Length;
import wainscribe.model.length.LengthUnit;

/** Verdicts on rooms: limits of 13 mm + 0.1 % and of 5 % of the perimeter, and of 5 degrees (common practice). */
class ClosureCheckTest {

	private final ClosureCheck check = new ClosureCheck(LengthUnit.MILLIMETRE);

	private static Room room(double... lengthsAndAngles) {
		Room room = WainscribeFactory.eINSTANCE.createRoom();
		room.setName("Attic");
		for (int i = 0; i < lengthsAndAngles.length; i += 2) {
			Wall wall = WainscribeFactory.eINSTANCE.createWall();
			wall.setName(String.valueOf((char) ('A' + i / 2)));
			wall.setLength(Length.ofMillimetres(BigDecimal.valueOf(lengthsAndAngles[i])));
			if (lengthsAndAngles[i + 1] > 0) {
				wall.setAngle(BigDecimal.valueOf(lengthsAndAngles[i + 1]));
			}
			room.getWalls().add(wall);
		}
		return room;
	}

	private static void diagonal(Room room, int from, int to, long distance) {
		Diagonal diagonal = WainscribeFactory.eINSTANCE.createDiagonal();
		diagonal.setFrom(room.getWalls().get(from));
		diagonal.setTo(room.getWalls().get(to));
		diagonal.setDistance(Length.ofMillimetres(distance));
		room.getDiagonals().add(diagonal);
	}

	@Test
	void tellsClosurePerimeterAreaAndWalls() {
		RoomClosure closure = check.check(room(3652, 0, 2440, 0, 3646, 0, 2436, 0));
		assertEquals(RoomClosure.Verdict.CLOSES, closure.verdict());
		assertEquals(new BigDecimal("7.211"), closure.closure());
		assertEquals(Length.ofMillimetres(12174), closure.perimeter());
		assertEquals(new BigDecimal("8.8963"), closure.area());
		assertEquals(4, closure.walls());
		assertEquals(List.of(), closure.doubtful());
	}

	/** Perimeter about 14 m: doubtful above 13 + 14 = 27 mm, refused above 5 % = 700 mm. */
	@ParameterizedTest
	@CsvSource({ "4000, CLOSES", "4027, CLOSES", "4028, DOUBTFUL", "3974, CLOSES", "3973, DOUBTFUL", "4700, DOUBTFUL", "4740, REFUSED", "3300, REFUSED" })
	void limitsHold(double length, RoomClosure.Verdict verdict) {
		assertEquals(verdict, check.check(room(4000, 0, 3000, 0, length, 0, 3000, 0)).verdict());
	}

	@Test
	void openRoomsAndPairsOfWallsAreOnlyMeasured() {
		Room open = room(4000, 0, 3000, 0, 1000, 0);
		open.setOpen(Boolean.TRUE);
		RoomClosure closure = check.check(open);
		assertEquals(RoomClosure.Verdict.NOT_CHECKED, closure.verdict());
		assertNull(closure.closure());
		assertNull(closure.area());
		assertEquals(Length.ofMillimetres(8000), closure.perimeter());
		assertEquals(RoomClosure.Verdict.NOT_CHECKED, check.check(room(4000, 0, 3000, 0)).verdict());
	}

	@ParameterizedTest
	@CsvSource({ "90, 90, CLOSES, ''", "95, 90, DOUBTFUL, ''", "95.1, 90, REFUSED, B", "90, 84.9, REFUSED, C" })
	void anglesMayMissByFiveDegrees(double second, double third, RoomClosure.Verdict verdict, String likeliest) {
		RoomClosure closure = check.check(room(4000, 90, 3000, second, 4000, third, 3000, 90));
		assertEquals(verdict, closure.verdict());
		if (!likeliest.isEmpty()) {
			assertEquals(likeliest, closure.likeliest());
			assertTrue(closure.doubtful().getFirst().isAboutAngle());
		}
	}

	@Test
	void aTriangleWithDefaultCornersIsRefused() {
		RoomClosure closure = check.check(room(3000, 0, 4000, 0, 5000, 0));
		assertEquals(RoomClosure.Verdict.REFUSED, closure.verdict());
		assertEquals(new BigDecimal("90.0000"), closure.angleMiss());
	}

	@Test
	void aTriangleWithItsAnglesCloses() {
		RoomClosure closure = check.check(room(3000, 90, 4000, 36.869898, 5000, 53.130102));
		assertEquals(RoomClosure.Verdict.CLOSES, closure.verdict());
		assertEquals(new BigDecimal("6.0000"), closure.area());
	}

	@Test
	void aForgottenOutsideCornerIsFound() {
		RoomClosure closure = check.check(room(3000, 0, 3300, 0, 1800, 0, 900, 0, 1200, 0, 2400, 0));
		assertEquals("D", closure.likeliest());
		assertEquals("expected the inside angles of room Attic to add up to 720 degrees; they add up to 540, most likely wrong at the right end of wall D",
				closure.doubtful().getFirst().message());
		assertEquals(RoomClosure.Verdict.CLOSES, check.check(room(3000, 0, 3300, 0, 1800, 0, 900, 270, 1200, 0, 2400, 0)).verdict());
	}

	/** A slip in one of two parallel walls: a diagonal tells which. 3-4-5 rooms. */
	@ParameterizedTest
	@CsvSource({ "4300, 4000, A, 4000 mm", "4000, 4300, C, 4000 mm", "3700, 4000, A, 4000 mm", "4000, 3700, C, 4000 mm" })
	void aDiagonalTellsParallelWallsApart(double first, double third, String wrong, String right) {
		Room room = room(first, 0, 3000, 0, third, 0, 3000, 0);
		diagonal(room, 0, 2, 5000);
		RoomClosure closure = check.check(room);
		assertEquals(wrong, closure.likeliest());
		assertEquals("expected the walls of room Attic to close; they miss by 300 mm, most likely in wall " + wrong + " (" + right + " would close)",
				closure.doubtful().getFirst().message());
	}

	@Test
	void withoutADiagonalBothParallelWallsAreNamed() {
		RoomClosure closure = check.check(room(4000, 0, 3000, 0, 4300, 0, 3000, 0));
		assertEquals("C", closure.likeliest());
		assertEquals("expected the walls of room Attic to close; they miss by 300 mm, most likely in wall C (4000 mm would close), else in A",
				closure.doubtful().getFirst().message());
	}

	@Test
	void aDiagonalThatDoesNotFitIsDoubtful() {
		Room room = room(4000, 0, 3000, 0, 4000, 0, 3000, 0);
		diagonal(room, 0, 2, 5060);
		RoomClosure closure = check.check(room);
		assertEquals(RoomClosure.Verdict.CLOSES, closure.verdict());
		assertEquals("the diagonal from wall A to wall C measures 5060 mm, walls and angles give 5000 mm; measure the corners between them",
				closure.doubtful().getFirst().message());
	}

	@Test
	void cornersOfShortLegsAndAgainstTheAngleAreDoubtful() {
		Room room = room(4000, 95, 3000, 0, 4000, 0, 3000, 0);
		room.getWalls().get(0).setCorner(corner(900, 1200, 1500));
		room.getWalls().get(1).setCorner(corner(30, 40, 50));
		List<Doubt> doubts = check.check(room).doubtful();
		assertEquals("the angle is given as 95 degrees, the triangle measured there gives 90.0", doubts.get(0).message().replace("95.0", "95"));
		assertEquals("legs of 30 mm and 40 mm are too short to tell the angle; measure 600 mm or 24 in along each wall", doubts.get(1).message());
		assertEquals(2, doubts.size());
	}

	private static Corner corner(long a, long b, long c) {
		Corner corner = WainscribeFactory.eINSTANCE.createCorner();
		corner.setLegThis(Length.ofMillimetres(a));
		corner.setLegNext(Length.ofMillimetres(b));
		corner.setDiagonal(Length.ofMillimetres(c));
		return corner;
	}

	/** In a room of five walls with no two parallel, a slip of one length is always found, and what would mend it. */
	@Property
	void aSlipIsFoundWhereNoWallsAreParallel(@ForAll @IntRange(max = 4) int wrong, @ForAll @IntRange(min = 150, max = 900) int slip, @ForAll boolean isLonger) {
		double[] lengths = { 3000, 2500, 2800, 2600, 0 };
		double[] angles = { 100, 115, 105, 112, 108 };
		Traverse first = RoomTraverse.walk(List.of(3000.0, 2500.0, 2800.0), List.of(100.0, 115.0, 105.0));
		// The last two walls close the walk exactly: solve d u4 + e u5 = -end.
		double a4 = Math.toRadians(90 + 80 + 65 + 75);
		double a5 = a4 + Math.toRadians(68);
		double determinant = Math.cos(a4) * Math.sin(a5) - Math.cos(a5) * Math.sin(a4);
		lengths[3] = (-first.end().north() * Math.sin(a5) + first.end().east() * Math.cos(a5)) / determinant;
		lengths[4] = (-Math.cos(a4) * first.end().east() + Math.sin(a4) * first.end().north()) / determinant;
		double[] measured = lengths.clone();
		measured[wrong] += isLonger ? slip : -slip;
		List<Double> walls = java.util.Arrays.stream(measured).boxed().toList();
		Traverse walk = RoomTraverse.walk(walls, java.util.Arrays.stream(angles).boxed().toList());
		List<WrongWall> guesses = WrongWall.likeliest(walk, List.of());
		assertEquals(1, guesses.size());
		assertEquals(wrong, guesses.getFirst().wall());
		assertEquals(lengths[wrong], guesses.getFirst().length(), 1e-6);
	}
}
