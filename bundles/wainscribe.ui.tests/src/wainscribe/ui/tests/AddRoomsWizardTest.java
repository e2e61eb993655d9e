// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;

import org.eclipse.jface.wizard.WizardDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import wainscribe.model.length.Length;
import wainscribe.ui.home.HomeView;
import wainscribe.ui.survey.AddRoomsWizard;

/** The survey wizard marks what is wrong before anything is written, and brings in what is right. */
class AddRoomsWizardTest {

	private static final int WIDTH_COLUMN = 7;

	private TestHome home;
	private WizardDialog dialog;
	private Shell shell;

	@BeforeEach
	void open() throws Exception {
		home = TestHome.of("survey-test", TestHome.SURVEY);
		dialog = new WizardDialog(TestHome.window().getShell(), new AddRoomsWizard(TestHome.sessions(), home.project()));
		dialog.setBlockOnOpen(false);
		dialog.open();
		shell = dialog.getShell();
		Widgets.settle();
	}

	@AfterEach
	void close() throws Exception {
		dialog.close();
		home.close();
	}

	@Test
	void badRowsAreMarkedAndNothingIsWritten() throws Exception {
		String before = stored();
		choose(TestHome.SURVEY.replace("Study", "Den").replace("wall,Den,B,,,,120", "wall,Den,B,,,,72 1/0"));
		TableItem row = Arrays.stream(table().getItems()).filter(item -> item.getText(0).equals("6")).findFirst().orElseThrow();
		assertEquals("72 1/0", row.getText(WIDTH_COLUMN));
		assertNotNull(row.getImage(0), "the row is marked");
		assertNotNull(row.getImage(WIDTH_COLUMN), "the cell is marked");
		TableItem sound = Arrays.stream(table().getItems()).filter(item -> item.getText(0).equals("5")).findFirst().orElseThrow();
		assertNull(sound.getImage(0), "a sound row is not marked");
		assertTrue(outcome().contains("row 6, column width: \"72 1/0\""), outcome());
		assertFalse(Widgets.button(shell, "Finish").isEnabled());
		assertEquals(before, stored());
		assertEquals(1, home.session().rooms().size());
	}

	@Test
	void aNewRoomIsAnnouncedAndAdded() throws Exception {
		choose(TestHome.SURVEY.replace("Study", "Den"));
		assertTrue(outcome().contains("Den: new room"), outcome());
		assertEquals(1, home.session().rooms().size(), "nothing is added before Finish");
		Widgets.press(Widgets.button(shell, "Finish"));
		assertEquals("Den", home.session().rooms().get(1).room().getName());
		assertTrue(Files.exists(directory().resolve("rooms/den.room")));
		HomeView view = TestHome.show(HomeView.ID, HomeView.class);
		Tree tree = Widgets.find(shellOf(view), Tree.class, each -> Widgets.rows(each).stream().anyMatch(row -> row.getText().startsWith("Test house")));
		Widgets.waitUntil("the Home view lists the room",
			() -> Widgets.rows(tree).stream().anyMatch(row -> row.getText().startsWith("Den \u00b7 4 walls measured")));
	}

	@Test
	void aMeasurementTakenAgainUpdatesTheRoom() throws Exception {
		choose(TestHome.SURVEY.replace("wall,Study,A,,,,144", "wall,Study,A,,,,144 1/8"));
		assertTrue(outcome().contains("Study: 0 added, 1 changed, 0 removed"), outcome());
		Widgets.press(Widgets.button(shell, "Finish"));
		assertEquals(Length.ofInches(1153, 8), home.session().rooms().get(0).room().getWalls().get(0).getLength());
	}

	private void choose(String survey) throws Exception {
		Path file = TestHome.survey(survey);
		Text field = Widgets.labelled(shell, "Survey file:", Text.class);
		Widgets.type(field, file.toString());
		Widgets.waitUntil("the preview shows the file", () -> table().getItemCount() > 0);
	}

	private Table table() {
		return Widgets.find(shell, Table.class, each -> true);
	}

	private String outcome() {
		return Widgets.find(table().getParent().getParent(), Text.class, text -> (text.getStyle() & SWT.MULTI) != 0).getText();
	}

	private Path directory() {
		return home.project().getLocation().toPath();
	}

	private String stored() throws Exception {
		return Files.readString(directory().resolve("wainscribe.home")) + Files.readString(directory().resolve("rooms/study.room"));
	}

	private static Shell shellOf(HomeView view) {
		return view.getSite().getShell();
	}
}
