// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.core.commands.ParameterizedCommand;
import org.eclipse.core.runtime.Adapters;
import org.eclipse.draw2d.FigureCanvas;
import org.eclipse.draw2d.IFigure;
import org.eclipse.gef.LayerConstants;
import org.eclipse.gef.editparts.LayerManager;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.handlers.IHandlerService;
import org.junit.jupiter.api.Test;

import wainscribe.model.Wall;
import wainscribe.ui.elevation.ghost.GhostPlan;
import wainscribe.ui.elevation.overview.OverviewBar;
import wainscribe.ui.elevation.table.DrawingTable;
import wainscribe.ui.elevation.table.Ghost;

/** Another wall is seen through the one that is worked on, its left and right changed over; the overview moves the drawing. */
class GhostAndOverviewTest extends OpenEditor {

	private static final double INCH = 25.4;

	private List<Wall> walls() {
		return session.room().getWalls();
	}

	private DrawingTable table() {
		return Adapters.adapt(editor, DrawingTable.class);
	}

	private void run(String command) throws Exception {
		page().activate(editor);
		ICommandService commands = PlatformUI.getWorkbench().getService(ICommandService.class);
		PlatformUI.getWorkbench().getService(IHandlerService.class)
				.executeCommand(new ParameterizedCommand(commands.getCommand("wainscribe.ui.elevation." + command), null), null);
		hand.settle();
	}

	@Test
	void whatStandsFaceToFaceLiesAtTheSamePlace() {
		GhostPlan plan = GhostPlan.of(walls(), walls().get(0), Ghost.OPPOSITE).orElseThrow();
		assertSame(walls().get(2), plan.wall());
		assertEquals(144 * INCH, plan.x(0), 1e-6);
		assertEquals(54 * INCH, plan.x(90 * INCH), 1e-6, "the map ends 90 in from the left there, 54 in from the left here");
	}

	@Test
	void anAdjoiningWallIsFoldedAboutTheCorner() {
		GhostPlan left = GhostPlan.of(walls(), walls().get(0), Ghost.LEFT).orElseThrow();
		assertSame(walls().get(3), left.wall());
		assertEquals(0, left.x(108 * INCH), 1e-6, "the corner is shared");
		assertEquals(16 * INCH, left.x(92 * INCH), 1e-6, "the door is as far from it");
		GhostPlan right = GhostPlan.of(walls(), walls().get(0), Ghost.RIGHT).orElseThrow();
		assertSame(walls().get(1), right.wall());
		assertEquals(144 * INCH, right.x(0), 1e-6);
		assertEquals(Optional.empty(), GhostPlan.of(walls(), walls().get(0), Ghost.NONE));
	}

	@Test
	void theGhostComesByKeyboardAndFollowsTheWall() throws Exception {
		IFigure layer = ((LayerManager) viewer.getEditPartRegistry().get(LayerManager.ID)).getLayer(LayerConstants.CONNECTION_LAYER);
		assertTrue(layer.getChildren().isEmpty());
		viewer.select(part(walls().get(0)));
		run("nextGhost");
		assertEquals(Ghost.OPPOSITE, table().overlays().ghost());
		int on = ((IFigure) layer.getChildren().get(0)).getBounds().x;
		viewer.select(part(walls().get(1)));
		hand.settle();
		assertEquals(1, layer.getChildren().size());
		assertTrue(((IFigure) layer.getChildren().get(0)).getBounds().x > on, "it is on the next wall now");
		run("nextGhost");
		run("nextGhost");
		run("nextGhost");
		assertTrue(layer.getChildren().isEmpty());
		assertFalse(session.isDirty(), "looking changes nothing");
	}

	@Test
	void theOverviewMovesTheDrawing() throws Exception {
		OverviewBar bar = find(viewer.getControl().getParent().getParent()).orElseThrow();
		assertFalse(bar.isVisible());
		run("showOverview");
		assertTrue(bar.isVisible());
		FigureCanvas canvas = (FigureCanvas) viewer.getControl();
		canvas.scrollToX(0);
		hand.settle();
		Event press = new Event();
		press.x = bar.getSize().x - 12;
		press.y = bar.getSize().y / 2;
		press.button = 1;
		bar.notifyListeners(SWT.MouseDown, press);
		bar.notifyListeners(SWT.MouseUp, press);
		hand.settle();
		int right = canvas.getViewport().getViewLocation().x;
		assertTrue(right > 0, "the last wall is in view");
		Event key = new Event();
		key.keyCode = SWT.HOME;
		bar.notifyListeners(SWT.KeyDown, key);
		hand.settle();
		assertEquals(0, canvas.getViewport().getViewLocation().x);
		run("showOverview");
		assertFalse(bar.isVisible());
	}

	private static Optional<OverviewBar> find(Composite parent) {
		return Stream.of(parent.getChildren()).filter(Control.class::isInstance)
				.flatMap(child -> child instanceof OverviewBar bar ? Stream.of(bar)
						: child instanceof Composite inner ? find(inner).stream() : Stream.empty())
				.findFirst();
	}
}
