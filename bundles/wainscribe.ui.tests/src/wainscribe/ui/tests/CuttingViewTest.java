// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;

import org.eclipse.core.runtime.Adapters;
import org.eclipse.jface.action.ActionContributionItem;
import org.eclipse.jface.action.IAction;
import org.eclipse.jface.action.IToolBarManager;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.eclipse.ui.IEditorPart;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import wainscribe.commands.SetFeatureCommand;
import wainscribe.layout.FrameOutline;
import wainscribe.model.WainscribePackage.Literals;
import wainscribe.model.length.Length;
import wainscribe.takeoff.cutting.HomePlan;
import wainscribe.takeoff.cutting.PlannedPiece;
import wainscribe.ui.ElementSelector;
import wainscribe.ui.RoomEditors;
import wainscribe.ui.cutting.CuttingView;
import wainscribe.ui.home.HomeView;
import wainscribe.ui.session.RoomSession;

/** The cutting plan follows the design, shows where pieces go, and can be accepted and taken back. */
class CuttingViewTest {

	private TestHome home;
	private RoomSession room;
	private CuttingView view;

	@BeforeEach
	void open() throws Exception {
		home = TestHome.of("cutting-test", TestHome.SURVEY.replace("rail=38;", "rail=38;stock=96|192;"));
		room = home.session().rooms().get(0);
		view = TestHome.show(CuttingView.ID, CuttingView.class);
		HomeView homes = TestHome.show(HomeView.ID, HomeView.class);
		homes.getSite().getSelectionProvider().setSelection(new StructuredSelection(room));
		TestHome.show(CuttingView.ID, CuttingView.class);
		planned();
	}

	@AfterEach
	void close() throws Exception {
		home.close();
	}

	private HomePlan planned() {
		Widgets.waitUntil("the cuts are planned", () -> view.plan().isPresent() && !view.isPlanning());
		return view.plan().orElseThrow();
	}

	private IAction action(String text) {
		IToolBarManager bar = view.getViewSite().getActionBars().getToolBarManager();
		return Arrays.stream(bar.getItems()).filter(ActionContributionItem.class::isInstance)
			.map(item -> ((ActionContributionItem) item).getAction()).filter(each -> each.getText().replace("&", "").startsWith(text))
			.findFirst().orElseThrow();
	}

	private PlannedPiece firstSide() {
		return planned().bars().stream().flatMap(bar -> bar.pieces().stream()).filter(piece -> piece.label().endsWith("/top")).findFirst()
			.orElseThrow();
	}

	private void pointer(int type, PlannedPiece piece) {
		Rectangle bounds = view.bars().boundsOf(piece.room(), piece.label()).orElseThrow();
		Event event = new Event();
		event.x = bounds.x + bounds.width / 2;
		event.y = bounds.y + bounds.height / 2;
		event.button = 1;
		view.bars().canvas().notifyListeners(type, event);
	}

	private void press(int key) {
		Event event = new Event();
		event.keyCode = key;
		view.bars().canvas().notifyListeners(SWT.KeyDown, event);
	}

	@Test
	void theBuyListHasWhatThePlanBuys() {
		HomePlan plan = planned();
		Table table = Widgets.find(view.bars().canvas().getShell(), Table.class, each -> each.getColumnCount() == 5 && each.isVisible());
		assertEquals(plan.buys().size(), table.getItemCount());
		assertEquals(String.valueOf(plan.buys().getFirst().count()), table.getItem(0).getText(0));
		assertFalse(plan.buys().isEmpty());
	}

	@Test
	void choosingAPieceSelectsItsFrameOnTheElevationAndBack() throws Exception {
		IEditorPart editor = RoomEditors.open(TestHome.window().getActivePage(), room, true);
		Widgets.settle();
		PlannedPiece side = firstSide();
		String frame = side.label().substring(0, side.label().lastIndexOf('/'));
		pointer(SWT.MouseDown, side);
		Widgets.settle();
		Object selected = ((IStructuredSelection) editor.getSite().getSelectionProvider().getSelection()).getFirstElement();
		assertEquals(frame, Adapters.adapt(selected, FrameOutline.class).id());
		assertEquals(side, view.bars().chosen().orElseThrow());

		FrameOutline other = room.design().layout().frames().filter(each -> !each.id().equals(frame)).findFirst().orElseThrow();
		String wall = room.room().getWalls().stream().filter(each -> room.design().layout().of(each).stream()
			.flatMap(one -> one.frames()).anyMatch(one -> one.id().equals(other.id()))).findFirst().orElseThrow().getName();
		editor.setFocus();
		TestHome.window().getActivePage().activate(editor);
		editor.getAdapter(ElementSelector.class).select(wall, other.id());
		Widgets.waitUntil("its four sides are lit", () -> view.bars().lit().stream().map(PlannedPiece::label).sorted().toList()
			.equals(List.of(other.id() + "/bottom", other.id() + "/left", other.id() + "/right", other.id() + "/top")));
	}

	@Test
	void arrowKeysGoFromPieceToPieceAndFromBarToBar() {
		HomePlan plan = planned();
		press(SWT.HOME);
		assertEquals(plan.bars().getFirst().pieces().getFirst(), view.bars().chosen().orElseThrow());
		press(SWT.ARROW_DOWN);
		assertEquals(plan.bars().get(1).pieces().getFirst(), view.bars().chosen().orElseThrow());
		press(SWT.ARROW_UP);
		press(SWT.END);
		assertEquals(plan.bars().getLast().pieces().getLast(), view.bars().chosen().orElseThrow());
	}

	@Test
	void anEditPlansAgain() {
		int bars = planned().bars().size();
		home.session().commandStack().execute(new SetFeatureCommand(home.session().home(), Literals.HOME__END_TRIM,
			Length.ofInches(40), "End trim"));
		Widgets.waitUntil("more bars are needed", () -> view.plan().isPresent() && !view.isPlanning() && view.plan().get().bars().size() > bars);
	}

	@Test
	void anAcceptedPlanLeavesOffcutsAndIsTakenBackByUndo() {
		HomePlan plan = planned();
		assertTrue(action("Accept").isEnabled());
		action("Accept").run();
		Widgets.waitUntil("nothing is left to cut", () -> view.plan().isPresent() && !view.isPlanning() && view.plan().get().bars().isEmpty());
		assertEquals(plan.leavingOffcuts().size(), home.session().home().getOffcuts().size());
		assertEquals(plan.bars().size(), view.plan().get().accepted().size());
		assertFalse(action("Accept").isEnabled());
		home.session().commandStack().undo();
		Widgets.waitUntil("the plan is back", () -> view.plan().isPresent() && view.plan().get().bars().size() == plan.bars().size());
		assertTrue(home.session().home().getOffcuts().isEmpty());
	}
}
