// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

import org.eclipse.jface.wizard.WizardDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.Test;

import wainscribe.model.ProfileUse;
import wainscribe.profile.TrimProfile;
import wainscribe.profile.file.ProfileFile;
import wainscribe.ui.profile.newprofile.NewProfileWizard;
import wainscribe.ui.session.HomeSession;
import wainscribe.ui.session.HomeSessions;

/** A profile from a classical shape lies in the home and can be chosen at once. */
class NewProfileWizardTest extends OpenDesk {

	@Test
	void aShapeInASizeBecomesAProfileOfTheHome() throws Exception {
		HomeSessions sessions = PlatformUI.getWorkbench().getWorkbenchWindows()[0].getService(HomeSessions.class);
		HomeSession home = sessions.openHome(project);
		NewProfileWizard wizard = new NewProfileWizard(sessions, project);
		WizardDialog dialog = new WizardDialog(editor.getSite().getShell(), wizard);
		dialog.setBlockOnOpen(false);
		dialog.open();
		settle();
		Combo shape = all(dialog.getShell(), Combo.class).getFirst();
		List<Text> fields = all(dialog.getShell(), Text.class).stream().filter(text -> (text.getStyle() & SWT.READ_ONLY) == 0).toList();
		shape.select(shape.indexOf(Stream.of(shape.getItems()).filter(item -> item.contains("Ogee")).findFirst().orElseThrow()));
		shape.notifyListeners(SWT.Selection, new Event());
		fields.get(0).setText("as wide as a hand");
		assertFalse(wizard.canFinish(), "no length");
		fields.get(0).setText("44");
		fields.get(1).setText("16");
		fields.get(2).setText("Hall ogee");
		assertTrue(wizard.canFinish(), String.valueOf(dialog.getCurrentPage().getErrorMessage()));
		assertTrue(wizard.performFinish());
		dialog.close();
		TrimProfile made = new ProfileFile(wizard.file().getLocation().toPath()).read();
		assertEquals("Hall ogee", made.name());
		assertEquals(mm(44), made.face());
		assertEquals(mm(16), made.thickness());
		long end = System.nanoTime() + 10_000_000_000L;
		while (home.profiles().find(made.id()).isEmpty() && System.nanoTime() < end) {
			Display.getCurrent().readAndDispatch();
		}
		assertEquals(made, home.profiles().find(made.id()).orElseThrow());
		assertTrue(home.ownProfiles().stream().anyMatch(profile -> profile.file().equals(wizard.file())));
		assertTrue(home.profiles().forUse(ProfileUse.FRAME).stream().anyMatch(profile -> profile.id().equals("strip")));
		sessions.close(home);
	}

	private static <T extends Control> List<T> all(Control root, Class<T> kind) {
		List<T> found = new ArrayList<>();
		if (kind.isInstance(root)) {
			found.add(kind.cast(root));
		}
		if (root instanceof Composite composite) {
			for (Control child : composite.getChildren()) {
				found.addAll(all(child, kind));
			}
		}
		return found;
	}
}
