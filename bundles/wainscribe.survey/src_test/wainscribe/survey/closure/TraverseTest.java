// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey.closure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.IntStream;

import org.junit.jupiter.api.Test;

/** Closure and compass-rule adjustment against published traverses. */
class TraverseTest {

	private static final double PUBLISHED = 0.01;

	/** Source: Purdue University, Agricultural Systems Management 215, traverse calculations; feet. */
	private static final Traverse FIVE_SIDED = new Traverse(List.of(new Course(285.1, 26 + 10 / 60.0), new Course(610.45, 104 + 35 / 60.0),
			new Course(720.48, 195.5), new Course(203, 358.3), new Course(647.02, 306.9)));
	/** Source: J. Mahun, Open Access Surveying Library, Traverse Computations, chapters F and I; feet. */
	private static final Traverse LOOP = new Traverse(List.of(new Course(472.68, 248.09305556), new Course(216.13, 340.23333333),
			new Course(276.52, 45.92222222), new Course(382.24, 125.0125)));
	/** Source: lecture note Compass Rule, public document 493615208; metres. */
	private static final Traverse FOUR_SIDED = new Traverse(List.of(new Course(80.4, 76), new Course(46.3, 144), new Course(72.8, 241),
			new Course(68, 322)));

	private static void assertPublished(Traverse traverse, double[][] latitudeAndDeparture) {
		for (int i = 0; i < latitudeAndDeparture.length; i++) {
			assertEquals(latitudeAndDeparture[i][0], traverse.courses().get(i).latitude(), PUBLISHED);
			assertEquals(latitudeAndDeparture[i][1], traverse.courses().get(i).departure(), PUBLISHED);
		}
	}

	private static void assertAdjusted(Traverse traverse, double[][] latitudeAndDeparture) {
		List<Traverse.Point> corners = traverse.adjustedCorners();
		for (int i = 0; i < latitudeAndDeparture.length; i++) {
			assertEquals(latitudeAndDeparture[i][0], corners.get(i + 1).north() - corners.get(i).north(), PUBLISHED);
			assertEquals(latitudeAndDeparture[i][1], corners.get(i + 1).east() - corners.get(i).east(), PUBLISHED);
		}
		assertEquals(0, corners.getFirst().to(corners.getLast()), 1e-9);
	}

	@Test
	void fiveSidedTraverseAsPublished() {
		assertPublished(FIVE_SIDED, new double[][] { { 255.88, 125.72 }, { -153.70, 590.78 }, { -694.28, -192.54 }, { 202.91, -6.02 }, { 388.48, -517.41 } });
		assertAdjusted(FIVE_SIDED, new double[][] { { 255.96, 125.66 }, { -153.52, 590.65 }, { -694.07, -192.69 }, { 202.97, -6.07 }, { 388.66, -517.55 } });
		assertEquals(2466.05, FIVE_SIDED.perimeter(), 1e-9);
		assertEquals(0.883316, FIVE_SIDED.misclosure(), 2e-6);
		assertEquals(272611.240, FIVE_SIDED.area(), 1e-3);
	}

	@Test
	void loopAsPublished() {
		assertPublished(LOOP, new double[][] { { -176.357, -438.548 }, { 203.395, -73.093 }, { 192.357, 198.651 }, { -219.312, 313.065 } });
		assertAdjusted(LOOP, new double[][] { { -176.386, -438.574 }, { 203.382, -73.105 }, { 192.340, 198.635 }, { -219.336, 313.044 } });
		assertEquals(0.111226, LOOP.misclosure(), 2e-6);
		assertEquals(102935.708, LOOP.area(), 1e-3);
	}

	@Test
	void fourSidedTraverseAsPublished() {
		assertPublished(FOUR_SIDED, new double[][] { { 19.451, 78.012 }, { -37.457, 27.214 }, { -35.294, -63.672 } });
		assertAdjusted(FOUR_SIDED, new double[][] { { 19.3653, 78.1055 }, { -37.5063, 27.2678 }, { -35.3716, -63.5874 } });
		assertEquals(0.420954, FOUR_SIDED.misclosure(), 2e-6);
		assertEquals(4169.143, FOUR_SIDED.area(), 1e-3);
	}

	/** Derived by exact arithmetic: a room of 3652, 2440, 3646, 2436 mm with square corners ends 6 mm east and 4 mm south. */
	@Test
	void squareRoomMissesByTheDifferenceOfItsWalls() {
		Traverse room = RoomTraverse.walk(List.of(3652.0, 2440.0, 3646.0, 2436.0), List.of(90.0, 90.0, 90.0, 90.0));
		assertEquals(-4, room.end().north(), 1e-9);
		assertEquals(6, room.end().east(), 1e-9);
		assertEquals(Math.sqrt(52), room.misclosure(), 1e-9);
		assertEquals(8896255.997, room.area(), 1e-3);
	}

	/** Derived from the cosine rule and Bretschneider's formula: four sides and one diagonal; area in square metres. */
	@Test
	void skewedQuadrilateralClosesWithItsAngles() {
		Traverse room = RoomTraverse.walk(List.of(3650.0, 2440.0, 3640.0, 2450.0), List.of(90.269882, 89.886465, 90.346617, 89.497037));
		assertEquals(0, room.misclosure(), 1e-3);
		assertEquals(8.911869, room.area() / 1e6, 1e-6);
		assertEquals(4400, room.corners().get(0).to(room.corners().get(2)), 1e-3);
		assertEquals(4378.127576, room.corners().get(1).to(room.corners().get(3)), 1e-3);
	}

	@Test
	void turningThePlanChangesNothing() {
		List<Course> turned = IntStream.range(0, 4)
				.mapToObj(i -> new Course(LOOP.courses().get(i).length(), LOOP.courses().get(i).azimuth() + 33)).toList();
		assertEquals(LOOP.misclosure(), new Traverse(turned).misclosure(), 1e-9);
		assertEquals(LOOP.area(), new Traverse(turned).area(), 1e-6);
	}
}
