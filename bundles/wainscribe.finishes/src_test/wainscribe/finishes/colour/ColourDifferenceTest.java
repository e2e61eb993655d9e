// SPDX-License-Identifier: EPL-2.0
package wainscribe.finishes.colour;

import static org.junit.jupiter.api.Assertions.assertEquals;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class ColourDifferenceTest {

	/** Source: Sharma, Wu, Dalal 2005, Table 1 (doi 10.1002/col.20070), all 34 pairs, to the published four digits. */
	@ParameterizedTest
	@CsvFileSource(resources = "ciede2000-pairs.csv", numLinesToSkip = 1)
	void publishedPairs(int pair, double l1, double a1, double b1, double l2, double a2, double b2, double published) {
		Lab one = new Lab(l1, a1, b1);
		Lab other = new Lab(l2, a2, b2);
		assertEquals(published, ColourDifference.ciede2000(one, other), 0.00005, () -> "pair " + pair);
		assertEquals(published, ColourDifference.ciede2000(other, one), 0.00005, () -> "pair " + pair + " turned");
	}

	@Property
	void noDifferenceFromItself(@ForAll @DoubleRange(min = 0, max = 100) double lightness,
			@ForAll @DoubleRange(min = -128, max = 128) double a, @ForAll @DoubleRange(min = -128, max = 128) double b) {
		Lab colour = new Lab(lightness, a, b);
		assertEquals(0, ColourDifference.ciede2000(colour, colour), 1e-9);
	}
}
