// SPDX-License-Identifier: EPL-2.0
package wainscribe.finishes.air;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MoistAirTest {

	/** Published: ASHRAE Fundamentals 2017, chapter 1, table 3, as in the test suite of an open psychrometrics library; relative 0.0003. */
	@ParameterizedTest
	@CsvSource({ "-20,103.24", "-5,401.74", "5,872.6", "25,3169.7", "50,12351.3", "100,101418.0" })
	void saturationPressure(double temperature, double published) {
		assertEquals(published, MoistAir.saturationPressure(temperature), published * 0.0003);
	}

	/** The equations of Hyland and Wexler, inverted by an independent program; below 0 degrees the frost point. */
	@ParameterizedTest
	@CsvSource({ "10,0.30,-6.010", "10,0.50,0.063", "10,0.90,8.437", "15,0.30,-2.141", "15,0.60,7.307" })
	void dewPoint(double temperature, double humidity, double dewPoint) {
		assertEquals(dewPoint, new MoistAir(temperature, humidity).dewPoint(), 0.001);
	}

	/** Highest humidity before a cold face sweats, from the same equations by an independent program. */
	@ParameterizedTest
	@CsvSource({ "20,5,0.37305", "20,12,0.59970", "22,14,0.60447", "25,21,0.78495" })
	void dryUpTo(double temperature, double surface, double limit) {
		assertEquals(limit, MoistAir.dryUpTo(temperature, surface), 0.0001);
		assertEquals(1, new MoistAir(temperature, limit).humidityAt(surface), 0.0002);
	}

	/** ASHRAE Fundamentals 2017, chapter 1, example 1: 40 degrees at 14 % hold about 6.5 g/kg. */
	@Test
	void humidityRatio() {
		assertEquals(0.0065, new MoistAir(40, 0.14).humidityRatio(101325), 0.0001);
	}

	/** The short Magnus formula (17.62, 243.12; from memory) agrees within 0.04 degrees above freezing. */
	@Property(tries = 500)
	void agreesWithTheShortFormula(@ForAll @DoubleRange(min = 10, max = 35) double temperature,
			@ForAll @DoubleRange(min = 0.55, max = 1) double humidity) {
		double g = Math.log(humidity) + 17.62 * temperature / (243.12 + temperature);
		assertEquals(243.12 * g / (17.62 - g), new MoistAir(temperature, humidity).dewPoint(), 0.04);
	}

	@Test
	void refusesWhatIsNoAir() {
		assertThrows(IllegalArgumentException.class, () -> new MoistAir(20, 0));
		assertThrows(IllegalArgumentException.class, () -> new MoistAir(20, 1.2));
		assertThrows(IllegalArgumentException.class, () -> new MoistAir(Double.NaN, 0.5));
	}
}
