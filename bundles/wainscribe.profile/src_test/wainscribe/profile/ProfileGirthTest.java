// SPDX-License-Identifier: EPL-2.0
package wainscribe.profile;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;

import org.junit.jupiter.api.Test;

/**
 * Girths against closed forms: pi times the radius for a half round, half of that for a quarter, and for an ogee over w by
 * h, h not above w, twice its radius (w / 2) / sin a times its turn a = 2 atan(h / w). Derived; plane geometry.
 */
class ProfileGirthTest {

	/** Rises of arcs are rounded to 1/8000 mm; none changes its length by more than twice that. */
	private static final double EXACT = 0.001;

	private static double girth(String id) {
		return BuiltInProfiles.catalogue().find(id).orElseThrow().girthMillimetres();
	}

	private static double ogee(double w, double h) {
		double turn = 2 * Math.atan(h / w);
		return 2 * turn * (w / 2) / Math.sin(turn);
	}

	/** An arc over w by h that is parallel to the wall at one end. */
	private static double arc(double w, double h) {
		double turn = 2 * Math.atan(h / w);
		return turn * w / Math.sin(turn);
	}

	@Test
	void roundAndFlatShapesHaveTheGirthOfTheirCircles() {
		Map<String, Double> expected = Map.of( //
				"bead-18", Math.PI * 9, //
				"fillet-30", 30 + 2 * 9.0, //
				"astragal-24", 2 * (13 - 8.16) + 2 * 3.84 + Math.PI * 8.16, //
				"ovolo-28", 14 + 17.5 + Math.PI / 2 * 10.5 + 3.5, //
				"cove-25", 12 + 16 + Math.PI / 2 * 9 + 3, //
				"torus-base-145", 136 + Math.PI / 2 * 9 + 9, //
				"scotia-20", 2.4 + Math.PI / 2 * 17.6 + 2.4);
		expected.forEach((id, girth) -> assertEquals(girth, girth(id), EXACT, id));
	}

	@Test
	void ogeesHaveTheGirthOfTheirTwoArcs() {
		assertEquals(13 + 2 * 3.84 + 3.25 + ogee(32 - 2 * 3.84, 9.75), girth("ogee-32"), EXACT);
		assertEquals(2 * (5 + ogee(19.2, 12.5) + 2.5) + 64 - 2 * 19.2, girth("ogee-rail-64"), EXACT);
		assertEquals(120 - 18 - 3.75 + ogee(18, 9) + 3.75 + 6, girth("ogee-base-120"), EXACT);
		assertEquals(7.75 + 2 * 6.4 + ogee(80 - 2 * 6.4, 62 - 7.75), girth("ogee-crown-80"), EXACT);
		assertEquals(20 + 7 + ogee(17.5, 8) + (70 - 7 - 17.5 - 4) + Math.PI / 2 * 4 + 8, girth("ogee-casing-70"), EXACT);
		assertEquals(5 + ogee(22, 15) + 4 + Math.PI * 6 + (44 - 22 - 12) + 24, girth("cap-44"), EXACT);
	}

	@Test
	void mixedShapesAddUp() {
		double bead = 38 * 0.33;
		double shoulder = 18 - bead / 2;
		double hollow = arc(38 - bead - 38 / 6.0, shoulder - 1.8 - 3.6);
		assertEquals(shoulder + Math.PI * bead / 2 + 1.8 + hollow + 38 / 6.0 + 3.6, girth("bead-and-cove-38"), EXACT);
		double nose = 58 * 0.4;
		double climb = 24 - nose / 2 - 4.8 - 2;
		assertEquals(2 * (4.8 + arc((58 - nose) / 2, climb) + 2) + Math.PI * nose / 2, girth("bead-rail-58"), EXACT);
	}

	@Test
	void girthNeverFallsBelowTheFace() {
		for (TrimProfile profile : BuiltInProfiles.catalogue().all()) {
			double chord = profile.section().face().stream().mapToDouble(segment -> Math.abs(
					segment.end().spot().x() - segment.start().spot().x())).sum();
			assertEquals(true, profile.girthMillimetres() >= chord, profile.id());
		}
	}
}
