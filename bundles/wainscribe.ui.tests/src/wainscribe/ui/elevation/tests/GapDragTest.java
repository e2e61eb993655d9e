// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.eclipse.core.runtime.Adapters;
import org.eclipse.draw2d.Cursors;
import org.eclipse.draw2d.IFigure;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.gef.LayerConstants;
import org.eclipse.gef.editparts.LayerManager;
import org.eclipse.swt.SWT;
import org.junit.jupiter.api.Test;

import wainscribe.layout.FrameOutline;
import wainscribe.model.Room;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.ui.elevation.editparts.FrameEditPart;
import wainscribe.ui.drafting.figures.NoteFigure;
import wainscribe.ui.elevation.gaps.GapSpot;
import wainscribe.ui.elevation.gaps.GapSpots;
import wainscribe.ui.elevation.table.DrawingTable;

/** The gap taken hold of: all gaps of the room follow, by pointer and by key, in one step that can be undone. */
class GapDragTest extends OpenEditor {

	/** Two pixels make more than a tape mark at this scale. */
	private static final int FAR = 6;

	@Test
	void aDraggedGapSetsAllGapsOfTheRoom() {
		Room before = EcoreUtil.copy(session.room());
		Length gap = session.design().layout().gap();
		drag(spot(false, GapSpot.Frames.BOTH), FAR, 0);
		Length wider = session.room().getBrief().getGap();
		assertTrue(wider.isMoreThan(gap), gap + " to " + wider);
		assertTrue(wider.isMultipleOf(session.units().tapeMark()), "on a tape mark: " + wider);
		assertEquals(wider, session.design().layout().gap());
		for (Wall wall : session.room().getWalls()) {
			for (GapSpot spot : GapSpots.of(session.design(), wall)) {
				assertTrue(spot.upright() || spot.area().width().equals(wider), "every gap follows: " + spot);
			}
		}
		assertEquals("Set Gap", session.commandStack().getUndoCommand().getLabel());
		undo();
		assertEqual(before, session.room());
		assertFalse(session.commandStack().canUndo());
	}

	@Test
	void theGapAtACornerFollowsThePointerOutward() {
		Length gap = session.design().layout().gap();
		drag(spot(false, GapSpot.Frames.HIGH), -FAR, 0);
		assertTrue(session.design().layout().gap().isLessThan(gap), "narrower");
	}

	@Test
	void theGapUnderAFrameIsTheVerticalOne() {
		Length under = session.design().layout().gapY();
		drag(spot(true, GapSpot.Frames.HIGH), 0, -FAR);
		assertTrue(session.design().layout().gapY().isMoreThan(under), "wider");
		assertNull(session.room().getBrief().getGap(), "the gap beside frames is still the room's to choose");
		assertEquals("Set Vertical Gap", session.commandStack().getUndoCommand().getLabel());
		undo();
		assertEquals(under, session.design().layout().gapY());
	}

	@Test
	void whileItIsDraggedTheDrawingFollowsAndEscapeTakesItBack() {
		Room before = EcoreUtil.copy(session.room());
		DrawingTable table = Adapters.adapt(editor, DrawingTable.class);
		Object drawn = table.drawingOf(wall());
		Point from = middle(spot(false, GapSpot.Frames.BOTH));
		hand.dragTo(from, FAR, 0);
		assertTrue(table.design().layout().gap().isMoreThan(session.design().layout().gap()), "the trial is shown");
		assertTrue(notes().stream().anyMatch(line -> line.startsWith("Gap ") && line.contains("frames") && line.endsWith("wide")),
				notes().toString());
		hand.key(SWT.ESC, SWT.ESC, 0);
		hand.drop(new Point(from.x + FAR, from.y));
		assertSame(session.design(), table.design());
		assertEquals(drawn, table.drawingOf(wall()));
		assertEqual(before, session.room());
		assertFalse(session.commandStack().canUndo());
	}

	@Test
	void thePointerOverAGapShowsThatItCanBeDragged() {
		Point gap = middle(spot(false, GapSpot.Frames.BOTH));
		hand.moveTo(gap);
		assertSame(Cursors.SIZEWE, part(wall()).getFigure().getCursor());
		hand.moveTo(middle(spot(true, GapSpot.Frames.HIGH)));
		assertSame(Cursors.SIZENS, part(wall()).getFigure().getCursor());
		hand.moveTo(at(wall(), Length.ofInches(72), Length.ofInches(70)));
		assertNull(part(wall()).getFigure().getCursor(), "elsewhere it is an arrow");
	}

	@Test
	void aClickInAGapSelectsTheWall() {
		hand.click(middle(spot(false, GapSpot.Frames.BOTH)));
		assertSame(wall(), viewer.getFocusEditPart().getModel());
		assertFalse(session.commandStack().canUndo());
	}

	@Test
	void aSelectedFrameHasAHandleInTheGapBesideIt() {
		FrameEditPart part = thing(wall(), FrameEditPart.class);
		FrameOutline frame = part.frame().orElseThrow();
		viewer.select(part);
		GapSpot right = GapSpots.round(session.design(), wall(), frame).stream()
				.filter(spot -> spot.area().x0().equals(frame.right())).findFirst().orElseThrow();
		Length gap = session.design().layout().gap();
		drag(right, -FAR, 0);
		assertFalse(session.design().layout().gap().equals(gap), "the gap is another");
		assertSame(part.getModel(), viewer.getFocusEditPart().getModel());
		assertEquals(List.of(), wall().getPlacedFrames(), "no frame is placed by hand");
	}

	@Test
	void keysWidenAndNarrowTheGapByTapeMarks() {
		Room before = EcoreUtil.copy(session.room());
		Length gap = session.design().layout().gap();
		Length mark = session.units().tapeMark();
		viewer.select(part(wall()));
		hand.key('w', 'w', 0);
		assertEquals(gap.plus(mark), session.design().layout().gap());
		hand.key('n', 'n', 0);
		assertEquals(gap, session.design().layout().gap());
		hand.key('w', 'W', SWT.SHIFT);
		assertEquals(gap.plus(mark.times(10)), session.design().layout().gap());
		hand.key('d', 'd', 0);
		assertEquals(gap.plus(mark.times(9)), session.design().layout().gapY());
		for (int i = 0; i < 4; i++) {
			undo();
		}
		assertEqual(before, session.room());
	}

	private Wall wall() {
		return session.room().getWalls().get(0);
	}

	private GapSpot spot(boolean upright, GapSpot.Frames frames) {
		return GapSpots.of(session.design(), wall()).stream().filter(spot -> spot.upright() == upright)
				.filter(spot -> spot.frames() == frames).findFirst().orElseThrow();
	}

	/** The middle along the gap, so that grips are not hit, and a little to the right across it. */
	private Point middle(GapSpot spot) {
		Length across = spot.area().width().dividedBy(2);
		return at(wall(), spot.area().x0().plus(across), spot.area().y0().plus(spot.area().height().dividedBy(2)))
				.translate(spot.upright() ? 0 : 2, 0);
	}

	private void drag(GapSpot spot, int dx, int dy) {
		hand.drag(middle(spot), dx, dy);
	}

	private List<String> notes() {
		IFigure layer = LayerManager.Helper.find(part(wall())).getLayer(LayerConstants.FEEDBACK_LAYER);
		for (Object child : layer.getChildren()) {
			if (child instanceof NoteFigure note) {
				return note.lines();
			}
		}
		return List.of();
	}
}
