// SPDX-License-Identifier: EPL-2.0
package wainscribe.fabrication;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import wainscribe.model.length.Length;

class SawTest {

	private static final Length FACE = Length.ofMillimetres(32);

	private static PieceEnd mitre(String degrees) {
		return new PieceEnd(Joint.FRAME_MITRE, new BigDecimal(degrees), BigDecimal.ZERO, LongSide.OUTER_EDGE);
	}

	/**
	 * By hand from 2 x face x cos t x (tan set - tan t): the mitre of a 3 : 4 slope is atan 2, the setting 63.5; that of a corner
	 * of 89 degrees falls on the half degree; derived.
	 */
	@ParameterizedTest
	@CsvSource({ "0.5, 63.4349, 63.5, 0.17", "0.1, 63.4349, 63.4, 0.09", "0.5, 44.5, 44.5, 0.00", "0.5, 45.25, 45.5, 0.40",
			"0.5, 45, 45, 0.00" })
	void theSettingIsRoundedAndTheOpeningStated(BigDecimal step, String exact, BigDecimal set, BigDecimal opening) {
		SawSetting setting = new Saw(step).set(mitre(exact), FACE, Length.ofMillimetres(13)).setting();
		assertEquals(0, set.compareTo(setting.turn()), setting::toString);
		assertEquals(opening, setting.opening());
	}

	/** Law: rounding errs by half a step at most, and a finer scale never states a larger bound than half its step explains. */
	@Property(tries = 200)
	void settingsAreNeverOffByMoreThanHalfAStep(@ForAll @IntRange(min = 0, max = 700_000) int tenThousandths) {
		BigDecimal exact = BigDecimal.valueOf(tenThousandths, 4);
		for (String step : new String[] { "0.5", "0.1" }) {
			BigDecimal set = new Saw(new BigDecimal(step)).rounded(exact);
			assertTrue(set.subtract(exact).abs().multiply(BigDecimal.TWO).compareTo(new BigDecimal(step)) <= 0);
		}
	}

	/** A coped end closes against a square one: only one cut errs. A crown's opening counts both angles' run over its face. */
	@Test
	void aCopeErrsOnce() {
		Saw saw = new Saw(new BigDecimal("0.5"));
		PieceEnd cope = new PieceEnd(Joint.COPE, new BigDecimal("45.25"), BigDecimal.ZERO, LongSide.BACK);
		assertEquals(new BigDecimal("0.20"), saw.set(cope, FACE, Length.ZERO).setting().opening());
		PieceEnd crown = new PieceEnd(Joint.INSIDE_MITRE, new BigDecimal("31.6190"), new BigDecimal("33.8629"), LongSide.LOWER_EDGE);
		PieceEnd set = saw.set(crown, Length.ofMillimetres(97), Length.ZERO);
		assertEquals(new BigDecimal("31.5"), set.setting().turn());
		assertEquals(0, new BigDecimal("34").compareTo(set.setting().tilt()));
		// 2 x 97 x cos 31.619 x cos 33.8629 x (tan 31.619 - tan 31.5)
		assertEquals(new BigDecimal("0.40"), set.setting().opening());
	}

	@Test
	void aScaleWithoutStepsIsRefused() {
		assertThrows(IllegalArgumentException.class, () -> new Saw(BigDecimal.ZERO));
	}
}
