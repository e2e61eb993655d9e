// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.eclipse.jface.action.ActionContributionItem;
import org.eclipse.jface.action.IAction;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.actions.ActionFactory;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import wainscribe.commands.RenameElementCommand;
import wainscribe.commands.SetFeatureCommand;
import wainscribe.model.WainscribePackage.Literals;
import wainscribe.rules.Finding;
import wainscribe.ui.ElementSelector;
import wainscribe.ui.RoomEditors;
import wainscribe.ui.findings.FindingsView;
import wainscribe.ui.home.HomeView;
import wainscribe.ui.session.RoomSession;

/** Findings follow the editing, and are read, filtered and copied in words a client understands. */
class FindingsViewTest {

	private static final String LEAD = "lead-before-1978";

	private TestHome home;
	private RoomSession session;
	private FindingsView view;
	private Tree list;

	@BeforeEach
	void open() throws Exception {
		home = TestHome.of("findings-test", TestHome.SURVEY);
		session = home.session().rooms().get(0);
		view = TestHome.show(FindingsView.ID, FindingsView.class);
		HomeView homes = TestHome.show(HomeView.ID, HomeView.class);
		homes.getSite().getSelectionProvider().setSelection(new StructuredSelection(session));
		Widgets.waitUntil("the room is checked", () -> session.isChecked());
		list = Widgets.find(view.getSite().getShell(), Tree.class, tree -> tree.getColumnCount() == 3);
	}

	@AfterEach
	void close() throws Exception {
		home.close();
	}

	@Test
	void anEditThatMendsAFindingTakesItOffTheList() {
		String message = lead().message();
		Widgets.waitUntil("the finding is listed", () -> texts().contains(message));
		session.commandStack().execute(new SetFeatureCommand(session.room().getFinishes().get(0), Literals.FINISH__DISTURB, false, "Disturb"));
		Widgets.waitUntil("the mended finding is gone", () -> !texts().contains(message));
		session.commandStack().undo();
		Widgets.waitUntil("undo brings it back", () -> texts().contains(message));
	}

	@Test
	void aHomeThatIsYoungerNeedsNoLeadCaution() {
		String message = lead().message();
		home.session().commandStack().execute(new SetFeatureCommand(home.session().home(), Literals.HOME__BUILT, 2004, "Year built"));
		Widgets.waitUntil("the rooms are checked again", () -> !texts().contains(message));
	}

	@Test
	void aFindingIsReadInFullWithItsSource() {
		Finding lead = lead();
		select(lead);
		String text = Widgets.find(list.getParent().getParent(), StyledText.class, each -> true).getText();
		assertTrue(text.contains(lead.message()) && text.contains(lead.source()) && text.contains(lead.room()), text);
	}

	@Test
	void aWeightCanBeHidden() {
		assertTrue(texts().stream().anyMatch(text -> text.endsWith("error") || text.endsWith("errors")), texts().toString());
		IAction errors = toolbar("Error");
		errors.setChecked(false);
		errors.run();
		assertTrue(texts().stream().noneMatch(text -> text.endsWith("error") || text.endsWith("errors")), texts().toString());
		errors.setChecked(true);
		errors.run();
		assertTrue(texts().contains(lead().message()));
	}

	@Test
	void findingsAreCopiedAsText() {
		Finding lead = lead();
		select(lead);
		view.getViewSite().getActionBars().getGlobalActionHandler(ActionFactory.COPY.getId()).run();
		Clipboard clipboard = new Clipboard(Display.getCurrent());
		try {
			Object copied = clipboard.getContents(TextTransfer.getInstance());
			assertEquals(true, copied instanceof String text && text.startsWith("Error: Study") && text.contains(lead.message()), String.valueOf(copied));
		} finally {
			clipboard.dispose();
		}
	}

	@Test
	void checkingAgainLeavesTheSelectionToTheDesigner() throws Exception {
		IEditorPart editor = RoomEditors.open(TestHome.window().getActivePage(), session, true);
		Widgets.settle();
		Finding lead = lead();
		select(lead);
		editor.getAdapter(ElementSelector.class).select("B", session.room().getWalls().get(1).getBoxes().get(0).getId());
		Object chosen = selected(editor);
		session.commandStack().execute(new RenameElementCommand(session.room().getFinishes().get(0), "varnish"));
		Widgets.waitUntil("the room is checked again", () -> session.findings().stream().anyMatch(found -> found.element().equals("varnish")));
		Widgets.settle();
		assertEquals(chosen, selected(editor));
	}

	private static Object selected(IEditorPart editor) {
		return ((IStructuredSelection) editor.getSite().getSelectionProvider().getSelection()).getFirstElement();
	}

	private Finding lead() {
		return session.findings().stream().filter(finding -> finding.rule().equals(LEAD)).findFirst().orElseThrow();
	}

	private void select(Finding finding) {
		Widgets.waitUntil("the finding is listed", () -> texts().contains(finding.message()));
		Object shown = Widgets.rows(list).stream().filter(row -> row.getText().equals(finding.message())).findFirst().orElseThrow().getData();
		view.getSite().getSelectionProvider().setSelection(new StructuredSelection(shown));
		Widgets.settle();
	}

	private IAction toolbar(String text) {
		return List.of(view.getViewSite().getActionBars().getToolBarManager().getItems()).stream()
			.filter(ActionContributionItem.class::isInstance).map(item -> ((ActionContributionItem) item).getAction())
			.filter(action -> text.equals(action.getText())).findFirst().orElseThrow();
	}

	private List<String> texts() {
		return Widgets.rows(list).stream().map(row -> row.getText()).toList();
	}
}
