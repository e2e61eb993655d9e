// SPDX-License-Identifier: EPL-2.0
package wainscribe.model.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.BigRange;
import net.jqwik.api.constraints.Scale;

/** Amounts with their units against their definitions. */
class MeasureTest {

	/** Source: NIST SP 811 (2008) appendix B: pound, cubic foot a minute, degree Fahrenheit; all exact. */
	@ParameterizedTest
	@CsvSource({ "1lb, 0.45359237", "1cfm, 0.4719474432", "32F, 0", "212F, 100", "-40F, -40", "20C, 20", "36m3/h, 10", "12 kg, 12", "38 l/s, 38", "8.25%, 8.25",
			"20°C, 20", "80CFM, 37.755795456" })
	void convertsByDefinition(String text, BigDecimal base) {
		assertEquals(0, base.compareTo(Measure.parse(text).inBaseUnit()));
	}

	@ParameterizedTest
	@ValueSource(strings = { "", "20", "C", "twenty C", "20 20C", "1e5kg", "20C%", "--2C", "1,5kg", "9999999999C" })
	void refusesWhatIsNoAmount(String text) {
		assertThrows(IllegalArgumentException.class, () -> Measure.parse(text));
	}

	@ParameterizedTest
	@ValueSource(strings = { "5stone", "5mm", "20K" })
	void refusesAnUnknownUnit(String text) {
		IllegalArgumentException refused = assertThrows(IllegalArgumentException.class, () -> Measure.parse(text));
		assertEquals('"' + text + "\": unknown unit; expected C, F, %, cfm, l/s, m3/h, kg or lb", refused.getMessage());
	}

	@Property
	void whatIsWrittenIsReadBack(@ForAll @BigRange(min = "-99999", max = "99999") @Scale(4) BigDecimal amount, @ForAll MeasureUnit unit) {
		Measure measure = new Measure(amount, unit);
		assertEquals(measure, Measure.parse(measure.toString()));
	}
}
