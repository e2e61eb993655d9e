// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.eclipse.jface.action.IAction;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.eclipse.ui.actions.ActionFactory;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import wainscribe.commands.MoveRailCommand;
import wainscribe.model.Room;
import wainscribe.model.length.Length;
import wainscribe.ui.home.HomeView;
import wainscribe.ui.properties.PropertiesView;
import wainscribe.ui.session.RoomSession;

/** Numbers are edited in place in any spelling; what is none is refused in place; every edit can be undone. */
class PropertiesViewTest {

	private TestHome home;
	private RoomSession session;
	private PropertiesView view;
	private Tree table;

	@BeforeEach
	void open() throws Exception {
		home = TestHome.of("property-test", TestHome.SURVEY);
		session = home.session().rooms().get(0);
		PropertiesView shown = TestHome.show(PropertiesView.ID, PropertiesView.class);
		HomeView homes = TestHome.show(HomeView.ID, HomeView.class);
		homes.getSite().getSelectionProvider().setSelection(new StructuredSelection(session));
		Widgets.settle();
		view = shown;
		table = Widgets.find(shown.getSite().getShell(), Tree.class, tree -> Widgets.rows(tree).stream().anyMatch(row -> row.getText().equals("Ceiling height")));
	}

	@AfterEach
	void close() throws Exception {
		home.close();
	}

	@Test
	void aFractionIsTakenAndCanBeUndoneAndRedone() {
		assertEquals("9'", row("Ceiling height").getText(1));
		Widgets.enter(typed("Ceiling height", "96 1/2"));
		assertEquals(Length.ofInches(193, 2), room().getHeight());
		assertEquals("8' 1/2\"", row("Ceiling height").getText(1));
		assertTrue(session.isDirty());
		assertEquals("&Undo Change Ceiling height", action(ActionFactory.UNDO).getText());
		action(ActionFactory.UNDO).run();
		assertEquals(Length.ofInches(108), room().getHeight());
		assertEquals("9'", row("Ceiling height").getText(1));
		assertFalse(session.isDirty());
		action(ActionFactory.REDO).run();
		assertEquals(Length.ofInches(193, 2), room().getHeight());
	}

	@Test
	void anySpellingOfALengthIsTaken() {
		for (String spelling : List.of("6' 1 1/2\"", "73 1/2", "6ft 1.5in", "73 + 1/2", "1866.9 mm", "1.8669 m")) {
			Widgets.enter(typed("Ceiling height", spelling));
			assertEquals(Length.ofInches(147, 2), room().getHeight(), spelling);
			session.commandStack().undo();
		}
	}

	@Test
	void whatIsNoLengthIsRefusedInPlace() {
		Text field = typed("Ceiling height", "nine feet");
		Widgets.enter(field);
		assertTrue(field.isVisible(), "the field stays open");
		assertEquals(Length.ofInches(108), room().getHeight());
		assertTrue(messages().stream().anyMatch(text -> text.startsWith("\"nine feet\": expected a length")), messages().toString());
		Widgets.enter(retyped(field, "72 1/3"));
		assertTrue(messages().stream().anyMatch(text -> text.contains("no tape has this mark")), messages().toString());
		Widgets.enter(retyped(field, "-3"));
		assertTrue(messages().stream().anyMatch(text -> text.contains("expected a length above zero")), messages().toString());
		Widgets.enter(retyped(field, "9'"));
		assertFalse(session.isDirty(), "the same length in another spelling is no edit");
	}

	@Test
	void aDecisionShowsWhatHoldsWithoutIt() {
		assertEquals("3' 2\"", row("Top of the rail").getText(1));
		Widgets.enter(typed("Top of the rail", ""));
		assertEquals("3'  (usual)", row("Top of the rail").getText(1), "a third of the ceiling height, common practice");
		session.commandStack().undo();
		assertEquals("3' 2\"", row("Top of the rail").getText(1));
	}

	@Test
	void theSheetFollowsEditsMadeElsewhere() {
		session.commandStack().execute(new MoveRailCommand(room(), Length.ofInches(40)));
		assertEquals("3' 4\"", row("Top of the rail").getText(1));
		assertEquals(Length.ofInches(40), session.design().layout().rail().orElseThrow().top());
	}

	private Text typed(String property, String text) {
		Event event = new Event();
		event.item = row(property);
		table.setSelection(row(property));
		table.notifyListeners(SWT.DefaultSelection, event);
		Widgets.settle();
		return retyped(Widgets.find(table, Text.class, Control::isVisible), text);
	}

	private static Text retyped(Text field, String text) {
		Widgets.type(field, text);
		return field;
	}

	private TreeItem row(String property) {
		return Widgets.rows(table).stream().filter(row -> row.getText().equals(property)).findFirst().orElseThrow();
	}

	private List<String> messages() {
		return Widgets.all(table.getParent().getParent()).filter(Label.class::isInstance).filter(Control::isVisible)
			.map(label -> ((Label) label).getText()).toList();
	}

	private IAction action(ActionFactory factory) {
		return view.getViewSite().getActionBars().getGlobalActionHandler(factory.getId());
	}

	private Room room() {
		return session.room();
	}
}
