// SPDX-License-Identifier: EPL-2.0
package wainscribe.fabrication;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import wainscribe.model.length.Length;

class MitreTest {

	/** Saw setting 90 less half the corner; derived, plane geometry (regular frames of 3, 4, 6 and 8 sides among them). */
	@ParameterizedTest
	@CsvSource({ "60, 60", "88, 46", "90, 45", "91, 44.5", "120, 30", "135, 22.5", "112.5, 33.75", "180, 0" })
	void plainMitresStandAtNinetyLessHalfTheCorner(double corner, BigDecimal saw) {
		assertEquals(0, saw.compareTo(Mitre.setting(corner / 2)));
	}

	/**
	 * Crown lying flat. The row 38 / 90 is in the settings printed in woodworking magazines and on mitre saws (31.62 and
	 * 33.86); the others are recomputed by vectors, without the formula, to 0.0001 degree.
	 */
	@ParameterizedTest
	@CsvSource({ "38, 90, 31.6190, 33.8629", "38, 88, 32.5190, 34.5307", "38, 135, 14.3064, 17.5512",
			"45, 90, 35.2644, 30.0000", "45, 88, 36.2127, 30.5740", "52, 90, 38.2385, 25.8068", "52, 135, 18.0769, 13.6272",
			"30, 60, 40.8934, 48.5904" })
	void crownIsCutFlatAtTurnAndTilt(double spring, double corner, double turn, double tilt) {
		assertEquals(turn, Mitre.flatTurn(spring, corner / 2).doubleValue(), 0.0001);
		assertEquals(tilt, Mitre.flatTilt(spring, corner / 2).doubleValue(), 0.0001);
	}

	/** Raked length for 1000 mm of run at common stair pitches: 1000 / cos of the pitch; derived. */
	@ParameterizedTest
	@CsvSource({ "3000, 4000, 5000", "500, 1200, 1300", "800, 1500, 1700", "700, 2400, 2500", "2000, 2100, 2900" })
	void slopesOfWholeNumberTrianglesAreExact(long rise, long run, long sloped) {
		assertEquals(Length.ofMillimetres(sloped), Mitre.sloped(Length.ofMillimetres(run), Length.ofMillimetres(rise)));
	}

	@Property(tries = 200)
	void slopedLengthIsTheNearestUnit(@ForAll @IntRange(min = 1, max = 40_000_000) int run,
			@ForAll @IntRange(min = -40_000_000, max = 40_000_000) int rise) {
		double exact = Math.hypot(run, rise);
		assertTrue(Math.abs(Mitre.sloped(new Length(run), new Length(rise)).units() - exact) <= 0.5000001);
	}

	/** A crown turned flat and one standing on edge close the same corner: the tilt falls to the plain mitre as S goes to 0. */
	@Property(tries = 200)
	void aCrownThatLiesAgainstTheWallIsAPlainMitre(@ForAll @IntRange(min = 20, max = 170) int corner) {
		assertEquals(0, Mitre.flatTurn(0, corner / 2.0).signum());
		assertEquals(Mitre.setting(corner / 2.0).doubleValue(), Mitre.flatTilt(0, corner / 2.0).doubleValue(), 0.0001);
	}

	@Test
	void aSquareCornerTakesTheWholeWidthFromTheFarEdge() {
		assertEquals(Length.ofInches(5, 4), Mitre.inset(Length.ofInches(5, 4), 45));
		assertEquals(Length.ZERO, Mitre.inset(Length.ofInches(5, 4), 90));
		assertEquals(Length.ofInches(-5, 4), Mitre.inset(Length.ofInches(5, 4), 135));
	}
}
