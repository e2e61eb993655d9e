// SPDX-License-Identifier: EPL-2.0
package wainscribe.model.outline;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import wainscribe.model.Corner;
import wainscribe.model.Wall;
import wainscribe.model.WainscribeFactory;
import wainscribe.model.length.LengthParser;
import wainscribe.model.length.LengthUnit;

/** Corner angles by the cosine rule; degrees computed independently to 1e-8. */
class CornerAngleTest {

	private final LengthParser inches = new LengthParser(LengthUnit.INCH);

	private Wall wall(String a, String b, String c) {
		Corner corner = WainscribeFactory.eINSTANCE.createCorner();
		corner.setLegThis(inches.parse(a));
		corner.setLegNext(inches.parse(b));
		corner.setDiagonal(inches.parse(c));
		Wall wall = WainscribeFactory.eINSTANCE.createWall();
		wall.setCorner(corner);
		return wall;
	}

	@ParameterizedTest
	@CsvSource({ "3, 4, 5, 90", "5, 12, 13, 90", "8, 15, 17, 90", "900mm, 1200mm, 1490mm, 89.20685254", "900mm, 1200mm, 1510mm, 90.79845314",
			"600mm, 600mm, 600mm, 60", "36, 48, 60 1/4, 90.49840165", "2, 3, 4, 104.47751219", "2, 2, 3 1/2, 122.08995126" })
	void comesFromTheTriangle(String a, String b, String c, double degrees) {
		assertEquals(degrees, CornerAngle.of(wall(a, b, c)).doubleValue(), 1e-6);
	}

	@Test
	void anAngleAboveStraightMakesTheTriangleAnOutsideCorner() {
		Wall wall = wall("36", "48", "60 1/4");
		wall.setAngle(BigDecimal.valueOf(270));
		assertEquals(269.50159835, CornerAngle.of(wall).doubleValue(), 1e-6);
	}

	@Test
	void withoutATriangleTheAngleGivenElseASquareHolds() {
		Wall wall = WainscribeFactory.eINSTANCE.createWall();
		assertEquals(BigDecimal.valueOf(90), CornerAngle.of(wall));
		wall.setAngle(new BigDecimal("135.5"));
		assertEquals(new BigDecimal("135.5"), CornerAngle.of(wall));
	}
}
