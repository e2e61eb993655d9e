// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.solver;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;

/** The solver on bare numbers. Expected values are derived from the definition of the layout problem. */
class RoomSolverTest {

	private static final long MM = 8000;
	private static final Limits LIMITS = new Limits(32 * MM, 200 * MM, Limits.UNLIMITED, -1, -1, 1);

	private static WallTask wall(long length, Island... islands) {
		Band band = new Band(Line.level(140 * MM), Line.level(840 * MM), 0, length * MM, true, List.of());
		return new WallTask(List.of(band), List.of(), List.of(islands));
	}

	private static Island plate(long x, long y) {
		return new Island(new Box(x * MM, y * MM, (x + 70) * MM, (y + 115) * MM), 13 * MM, 25 * MM, 0);
	}

	private static Layout best(long gap, WallTask... walls) {
		return new RoomSolver(new RoomTask(List.of(walls), LIMITS, -1, 80 * MM, List.of(gap * MM), List.of())).best().layout();
	}

	private static List<Integer> counts(Layout layout) {
		return layout.walls().stream().map(tiers -> tiers.get(0).runs().stream().mapToInt(run -> run.frames().size()).sum()).toList();
	}

	@Test
	void fewestFramesWithinTheBandWhenNothingElseDecides() {
		assertEquals(List.of(3), counts(best(80, wall(3000))), "h 540 allows 270 to 1080: two would be 1380, three are 893 wide");
	}

	@Test
	void anotherWallMovesTheChoiceTowardsOneWidth() {
		assertEquals(List.of(3, 2), counts(best(80, wall(3000), wall(2026))), "893.3 and 893 read as one width");
		assertEquals(0, Rank.offModule(best(80, wall(3000), wall(2026)).score().rank()));
	}

	@Test
	void aPierHasNoSayInTheModule() {
		Layout layout = best(80, wall(3000), wall(600));
		assertEquals(List.of(3, 1), counts(layout), "600 is shorter than 2 x 200 + 3 x 80");
		assertEquals(0, Rank.offModule(layout.score().rank()));
	}

	@Test
	void aPlateAcrossAStileChangesTheNumber() {
		Layout layout = best(80, wall(3000, plate(960, 400)));
		assertTrue(counts(layout).get(0) != 3, "the second of three frames would begin at 1053.3; the plate with its margin ends at 1043: "
				+ "the first ends at 973.3, across it");
		assertEquals(0, Rank.plain(layout.score().rank()));
		assertEquals(0, Rank.splits(layout.score().rank()));
	}

	@Test
	void ofTwoNumbersThatAreEquallyGoodTheSmallerIsOnTheEarlierWall() {
		RoomTask task = new RoomTask(List.of(wall(1000), wall(1000)), new Limits(32 * MM, 200 * MM, Limits.UNLIMITED, 0, -1, 1), -1, 80 * MM,
				List.of(80 * MM), List.of());
		Layout three = new RoomSolver(task).best(List.of(80 * MM), 3, 3).orElseThrow();
		assertEquals(List.of(1, 2), counts(three), "one and two frames, or two and one, have the same nine terms");
	}

	@Test
	void thereIsNoLayoutWithMoreFramesThanFit() {
		RoomTask task = new RoomTask(List.of(wall(1000)), LIMITS, -1, 80 * MM, List.of(80 * MM), List.of());
		assertTrue(new RoomSolver(task).best(List.of(80 * MM), 4, 100).isEmpty());
	}
}
