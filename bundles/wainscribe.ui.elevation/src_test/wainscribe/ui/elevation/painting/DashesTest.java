// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.painting;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;

import org.junit.jupiter.api.Test;

import wainscribe.drawing.Path;
import wainscribe.drawing.Point;
import wainscribe.drawing.Role;
import wainscribe.drawing.Subject;

/** Dashes cover what the pattern says of a line, round its corners. */
class DashesTest {

	@Test
	void aStraightLineIsCutByThePattern() {
		Path line = Path.line(Subject.NONE, Role.STUD, new Point(0, 0), new Point(10, 0));
		List<List<Point>> dashes = Dashes.of(line, List.of(3.0, 1.0), 1);
		assertEquals(List.of(List.of(new Point(0, 0), new Point(3, 0)), List.of(new Point(4, 0), new Point(7, 0)),
				List.of(new Point(8, 0), new Point(10, 0))), dashes);
	}

	@Test
	void aDashGoesRoundACorner() {
		Path path = Path.polyline(Subject.NONE, Role.STUD, List.of(new Point(0, 0), new Point(2, 0), new Point(2, 4)));
		List<List<Point>> dashes = Dashes.of(path, List.of(3.0, 1.0), 1);
		assertEquals(List.of(new Point(0, 0), new Point(2, 0), new Point(2, 1)), dashes.get(0));
		assertEquals(List.of(new Point(2, 2), new Point(2, 4)), dashes.get(1));
	}

	@Test
	void thePatternGrowsWithItsUnit() {
		Path line = Path.line(Subject.NONE, Role.STUD, new Point(0, 0), new Point(0, 100));
		assertEquals(3, Dashes.of(line, List.of(3.0, 1.0), 10).size());
	}
}
