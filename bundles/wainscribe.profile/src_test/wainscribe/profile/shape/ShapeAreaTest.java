// SPDX-License-Identifier: EPL-2.0
package wainscribe.profile.shape;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

import wainscribe.profile.BuiltInProfiles;
import wainscribe.profile.TrimProfile;

/**
 * Areas of sections against closed forms of plane geometry: circle pi r r, ellipse pi a b, trapezoid, and the ogee, whose two
 * equal arcs make up for one another, so that it covers what its chord does. Derived.
 */
class ShapeAreaTest {

	/** Points and rises are rounded to 1/8000 mm; along a metre of outline that is 0.06 square millimetres. */
	private static final double ROUNDED = 0.02;

	private static TrimProfile shape(String id) {
		return BuiltInProfiles.catalogue().find(id).orElseThrow();
	}

	private static double area(String id) {
		return shape(id).areaSquareMillimetres();
	}

	private static double quarterCircle(double radius) {
		return Math.PI / 4 * radius * radius;
	}

	@Test
	void straightShapesAreRectanglesAndTrapezoids() {
		assertEquals(30 * 9, area("fillet-30x9"), ROUNDED);
		assertEquals(40 * (14 + 5.6) / 2, area("bevel-40x14"), ROUNDED);
		assertEquals(36 * (12 + 4.8) / 2, area("ridge-36x12"), ROUNDED);
		assertEquals(45 * 12 - 3.6 * 3.6, area("chamfered-strip-45x12"), ROUNDED);
		assertEquals(42 * 15 * (1 + 2 + 3) / 9.0, area("stepped-42x15"), ROUNDED);
		assertEquals(140 * 20 - 140 / 3.0 * 8, area("stepped-base-140x20"), ROUNDED);
	}

	@Test
	void roundsAddAndHollowsTakePartsOfACircle() {
		assertEquals(2 * quarterCircle(9), area("bead-18x9"), ROUNDED);
		assertEquals(36 * 6 + 3 * 2 * quarterCircle(6), area("reeds-36x12"), ROUNDED);
		assertEquals(14 * 8.75 + 3.5 * 10.5 + quarterCircle(10.5) + 3.5 * 8.75, area("ovolo-28x14"), ROUNDED);
		assertEquals(12 * 8 + 3 * 9 + 81 - quarterCircle(9) + 3 * 8, area("cove-25x12"), ROUNDED);
		assertEquals(20 * 20 - quarterCircle(17.6), area("scotia-20x20"), ROUNDED);
		assertEquals(quarterCircle(18), area("quarter-round-18x18"), ROUNDED);
		assertEquals(145 * 18 - 81 + quarterCircle(9), area("torus-base-145x18"), ROUNDED);
	}

	@Test
	void anOgeeCoversWhatItsChordDoes() {
		double fillet = 32 * 0.12;
		assertEquals(13 * fillet + (32 - 2 * fillet) * (13 + 3.25) / 2 + 3.25 * fillet, area("ogee-32x13"), ROUNDED);
		double side = 36 * 0.12;
		assertEquals(4 * side + (36 - 2 * side) * (20 + 4) / 2 + 20 * side, area("cyma-recta-36x20"), ROUNDED);
		assertEquals(area("cyma-recta-36x20"), area("cyma-reversa-36x20"), ROUNDED);
	}

	/** Quarters of an oval are Bezier curves, whose area is less than 0.06 % off. */
	@Test
	void ovalsAreQuartersOfAnEllipse() {
		assertEquals(Math.PI / 4 * 18 * 12, area("quarter-round-18x12"), Math.PI / 4 * 18 * 12 * 0.0006);
		double quirk = 9 / 6.0;
		double deep = 12 - 3 - quirk;
		assertEquals(12 * 3.5 + 3 * 24.5 + Math.PI / 4 * 24.5 * deep, area("thumb-28x12"), 0.2);
	}

	/** Face and girth do not depend on the unit: 1 in = 25.4 mm. */
	@Test
	void inchSizesAreTheSameShapes() {
		assertEquals(shape("ogee-31.75x12.7").section(), shape("ogee-1.25x0.5in").section());
		assertEquals("Ogee, 1 1/4\" x 1/2\"", shape("ogee-1.25x0.5in").name());
	}
}
