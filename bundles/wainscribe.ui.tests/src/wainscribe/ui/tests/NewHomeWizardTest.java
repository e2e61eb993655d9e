// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;

import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.jface.wizard.WizardDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import wainscribe.model.Home;
import wainscribe.model.length.LengthUnit;
import wainscribe.model.storage.HomeFolder;
import wainscribe.ui.newhome.NewHomeWizard;

/** The wizard for a new home says what is missing, proposes a folder, and makes a project that can be read again. */
class NewHomeWizardTest {

	private NewHomeWizard wizard;
	private WizardDialog dialog;
	private Shell shell;

	@BeforeEach
	void open() {
		wizard = new NewHomeWizard(ResourcesPlugin.getWorkspace());
		dialog = new WizardDialog(TestHome.window().getShell(), wizard);
		dialog.setBlockOnOpen(false);
		dialog.open();
		shell = dialog.getShell();
		Widgets.settle();
	}

	@AfterEach
	void close() throws Exception {
		dialog.close();
		if (wizard.project().isPresent()) {
			wizard.project().get().delete(true, true, null);
		}
	}

	@Test
	void nothingCanBeFinishedWithoutName() {
		assertFalse(finish().isEnabled());
		Widgets.type(name(), "  ");
		assertFalse(finish().isEnabled());
	}

	@Test
	void folderFollowsTheNameSafely() {
		Widgets.type(name(), "../Café on the Hill / 2");
		assertEquals(workspace().resolve("cafe-on-the-hill-2").toString(), Widgets.labelled(shell, "Folder:", Text.class).getText());
	}

	@Test
	void aYearThatIsNoneIsRefusedInPlace() {
		Widgets.type(name(), "Year test");
		Widgets.type(Widgets.labelled(shell, "Year built:", Text.class), "19th century");
		assertFalse(finish().isEnabled());
		assertTrue(dialog.getCurrentPage().getErrorMessage().startsWith("\"19th century\": expected a year"),
			dialog.getCurrentPage().getErrorMessage());
	}

	@Test
	void finishMakesAHomeThatCanBeReadAgain() throws Exception {
		Widgets.type(name(), "Harbour flat");
		Combo country = Widgets.labelled(shell, "Country:", Combo.class);
		country.select(country.indexOf("Ireland"));
		country.notifyListeners(SWT.Selection, new Event());
		assertTrue(Widgets.button(shell, "Millimetres").getSelection(), "the units of the country are proposed");
		Widgets.type(Widgets.labelled(shell, "Year built:", Text.class), "1926");
		Widgets.press(finish());
		IProject project = wizard.project().orElseThrow();
		assertTrue(project.isOpen());
		Home home = HomeFolder.open(workspace().resolve("harbour-flat")).home();
		assertEquals("Harbour flat", home.getName());
		assertEquals("IE", home.getCountry());
		assertEquals(LengthUnit.MILLIMETRE, home.getUnits());
		assertEquals(1926, home.getBuilt());
		Widgets.waitUntil("the home is listed", () -> TestHome.sessions().homes().contains(project));
	}

	private Text name() {
		return Widgets.labelled(shell, "Client or home:", Text.class);
	}

	private Button finish() {
		return Widgets.button(shell, "Finish");
	}

	private static Path workspace() {
		return ResourcesPlugin.getWorkspace().getRoot().getLocation().toPath();
	}
}
