// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.eclipse.core.runtime.Adapters;
import org.junit.jupiter.api.Test;

import wainscribe.commands.SetDecisionCommand;
import wainscribe.drawing.LayerName;
import wainscribe.layout.StripOutline;
import wainscribe.model.WainscribePackage.Literals;
import wainscribe.model.Wall;
import wainscribe.ui.elevation.editparts.FrameEditPart;
import wainscribe.ui.elevation.editparts.StripEditPart;
import wainscribe.ui.elevation.editparts.ThingEditPart;
import wainscribe.ui.elevation.table.DrawingTable;

/** Battens and boards on the drawing table. */
class StripsOnTableTest extends OpenEditor {

	private void choose(String pattern) {
		session.commandStack().execute(new SetDecisionCommand(session.room(), Literals.BRIEF__PATTERN, pattern, "Pattern"));
		hand.settle();
	}

	private List<StripEditPart> strips(Wall wall) {
		return part(wall).things().stream().filter(StripEditPart.class::isInstance).map(StripEditPart.class::cast).toList();
	}

	@Test
	void choosingAPatternPutsItsStripsUpInOneStepThatCanBeUndone() {
		Wall north = session.room().getWalls().get(0);
		for (String pattern : List.of("battens-under-rail", "boards-and-rails")) {
			choose(pattern);
			List<StripOutline> outlines = session.design().layout().of(north).orElseThrow().strips().toList();
			assertFalse(outlines.isEmpty());
			assertEquals(outlines.size(), strips(north).size());
			assertTrue(part(north).things().stream().noneMatch(FrameEditPart.class::isInstance));
			assertFalse(Adapters.adapt(editor, DrawingTable.class).drawingOf(north).shapes(LayerName.STRIP).isEmpty());
			undo();
			assertTrue(strips(north).isEmpty());
			assertFalse(frames().isEmpty());
		}
	}

	@Test
	void aBattenCanBeClickedAndSaysWhatItIs() {
		choose("battens-under-rail");
		Wall north = session.room().getWalls().get(0);
		StripEditPart batten = strips(north).getFirst();
		StripOutline outline = batten.strip().orElseThrow();
		hand.click(at(north, outline.x().plus(outline.width().dividedBy(2)), outline.top().minus(outline.width())));
		ThingEditPart chosen = selected();
		assertEquals(batten, chosen);
		assertEquals("Batten " + outline.id(), chosen.name());
		assertTrue(chosen.value().contains("wide"), chosen.value());
		assertTrue(chosen.isCalled(outline.id()));
		assertNotNull(Adapters.adapt(chosen, StripOutline.class), "what the properties show");
	}
}
