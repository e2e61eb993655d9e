// SPDX-License-Identifier: EPL-2.0
package wainscribe.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;

import wainscribe.layout.FrameOutline;
import wainscribe.layout.RoomDesign;
import wainscribe.layout.Tier;
import wainscribe.model.length.Length;

class FramesOverRailTest {

	private final RoomDesign design = new ExampleRoom().design();
	private final List<FrameOutline> frames = design.layout().frames().toList();

	@Test
	void framesStandAboveTheRailOnly() {
		assertTrue(frames.size() > 1, "frames: " + frames.size());
		Length railTop = design.layout().rail().orElseThrow().top();
		assertEquals(Length.ofMillimetres(900), railTop);
		for (FrameOutline frame : frames) {
			assertEquals(Tier.UPPER, frame.tier());
			assertEquals(railTop.plus(design.layout().gapY()), frame.y());
			assertEquals(Length.ofMillimetres(2700).minus(design.layout().gapY()), frame.top());
		}
	}

	@Test
	void framesAreMadeOfTheExampleProfile() {
		assertEquals("example-reeds-36", design.layout().profile().id());
		assertEquals(Length.ofMillimetres(36), design.layout().profile().face());
	}
}
