// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RepeatedWordTest {

	@ParameterizedTest
	@CsvSource({ "Mirror {0} hangs {1} high, mirror, Mirror hangs {1} high", "Towel bar {0} is near, bar, Towel bar is near",
			"Mirror {0} hangs, mirror over the basin, Mirror over the basin hangs", "Mirror {0} hangs, chimney glass, Mirror {0} hangs",
			"Mirror {0} hangs, mirrored glass, Mirror {0} hangs", "{0} hangs, mirror, {0} hangs", "Mirror {0} hangs, '', Mirror {0} hangs" })
	void aNameThatBeginsWithTheWordBeforeItIsNotSaidTwice(String pattern, String name, String said) {
		assertEquals(said, RepeatedWord.without(pattern, 0, name));
	}
}
