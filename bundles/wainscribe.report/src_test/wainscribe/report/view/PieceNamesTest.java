// SPDX-License-Identifier: EPL-2.0
package wainscribe.report.view;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;

import org.junit.jupiter.api.Test;

class PieceNamesTest {

	@Test
	void sidesAndFramesAreNamedOnce() {
		assertEquals("A1, A2: top, bottom", PieceNames.together(List.of("A1/top", "A1/bottom", "A2/top", "A2/bottom")));
	}

	@Test
	void threeThatCountOnAreARange() {
		assertEquals("A1 to A3, A7: left", PieceNames.together(List.of("A1/left", "A2/left", "A3/left", "A7/left")));
	}

	@Test
	void otherSidesStandApart() {
		assertEquals("A1: top; A2: left", PieceNames.together(List.of("A1/top", "A2/left")));
	}

	@Test
	void anyNameIsKept() {
		assertEquals("north: rail; 99999999999", PieceNames.together(List.of("north/rail", "99999999999")));
	}
}
