// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.eclipse.draw2d.geometry.Rectangle;
import org.junit.jupiter.api.Test;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import wainscribe.model.length.Length;
import wainscribe.model.outline.Outline;

/** Lengths become pixels and pixels lengths in one place, and agree. */
class ProjectionTest {

	@Test
	void heightsGrowUpwardsOnTheWallAndDownwardsOnTheScreen() {
		Projection place = new Projection(0.5, 100, 900);
		Outline outline = Outline.ofSize(Length.ofMillimetres(200), Length.ofMillimetres(300), Length.ofMillimetres(40),
				Length.ofMillimetres(60));
		assertEquals(new Rectangle(200, 720, 20, 30), place.pixels(outline));
	}

	@Property
	void aPixelStandsForTheLengthThatLiesOnIt(@ForAll @IntRange(min = 0, max = 5000) int column,
			@ForAll @DoubleRange(min = 0.01, max = 4) double scale) {
		Projection place = new Projection(scale, 37, 900);
		assertEquals(column, place.x(place.xAt(column)));
		assertEquals(column, place.y(place.yAt(column)));
		assertTrue(place.length(column).signum() >= 0);
	}
}
