// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

import org.eclipse.jface.wizard.WizardDialog;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import wainscribe.commands.RenameElementCommand;
import wainscribe.ui.export.ExportPackWizard;
import wainscribe.ui.session.RoomSession;

/** The client pack is written as the room is on the screen, and never over something that is no pack. */
class ExportPackWizardTest {

	@TempDir
	Path folder;
	private TestHome home;
	private ExportPackWizard wizard;
	private WizardDialog dialog;
	private Shell shell;

	@BeforeEach
	void open() throws Exception {
		home = TestHome.of("pack-test", TestHome.SURVEY);
		RoomSession room = home.session().rooms().get(0);
		room.commandStack().execute(new RenameElementCommand(room.room(), "Winter <study>"));
		wizard = new ExportPackWizard(home.session(), room);
		dialog = new WizardDialog(TestHome.window().getShell(), wizard);
		dialog.setBlockOnOpen(false);
		dialog.open();
		shell = dialog.getShell();
		Widgets.settle();
		Widgets.press(Widgets.button(shell, "Open the pack when it is written"));
	}

	@AfterEach
	void close() throws Exception {
		dialog.close();
		home.close();
	}

	@Test
	void thePackHoldsWhatIsOnTheScreen() throws Exception {
		Path target = folder.resolve("for the client");
		Widgets.type(Widgets.labelled(shell, "Folder:", Text.class), target.toString());
		Widgets.press(Widgets.button(shell, "Finish"));
		assertTrue(wizard.firstPage().isPresent(), () -> String.valueOf(dialog.getCurrentPage().getErrorMessage()));
		assertEquals(target.resolve("pack.html"), wizard.firstPage().orElseThrow());
		for (String file : List.of("pack.html", "pack.pdf", "pieces.csv", "quantities.xlsx")) {
			assertTrue(Files.size(target.resolve(file)) > 0, file);
		}
		String page = Files.readString(target.resolve("pack.html"));
		assertTrue(page.contains("Winter &lt;study&gt;"), "the unsaved name stands in the pack, as text");
		assertFalse(page.contains("Winter <study>"));
		assertTrue(home.session().rooms().get(0).isDirty(), "writing a pack saves nothing");
	}

	@Test
	void aFileThatNoPackWroteIsNeverReplaced() throws Exception {
		Path page = folder.resolve("pack.html");
		Files.writeString(page, "dear client");
		Widgets.type(Widgets.labelled(shell, "Folder:", Text.class), folder.toString());
		Widgets.press(Widgets.button(shell, "Finish"));
		assertTrue(wizard.firstPage().isEmpty());
		String message = dialog.getCurrentPage().getErrorMessage();
		assertTrue(message.contains(page.toString()) && message.contains("not from an earlier pack"), message);
		try (Stream<Path> files = Files.list(folder)) {
			assertEquals(List.of(page), files.toList());
		}
		assertEquals("dear client", Files.readString(page));
	}
}
