// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.export;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;

import org.eclipse.jface.dialogs.Dialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.wizard.WizardPage;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.DirectoryDialog;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

import wainscribe.model.storage.FileNames;
import wainscribe.rules.Severity;
import wainscribe.ui.findings.FindingCounts;
import wainscribe.ui.session.HomeSession;
import wainscribe.ui.session.RoomSession;

/** Asks which rooms go into a client pack, and where it goes. */
final class ExportPackPage extends WizardPage {

	private static final String FOLDER = "pack"; //$NON-NLS-1$

	private final HomeSession home;
	private final List<RoomSession> all;
	private final RoomSession proposed;
	private Combo what;
	private Text folder;
	private Label findings;
	private Button open;
	private boolean ownFolder;
	private boolean writingFolder;

	ExportPackPage(HomeSession home, RoomSession proposed) {
		super("pack", Messages.ExportPackPage_Title, null); //$NON-NLS-1$
		this.home = home;
		this.all = home.rooms();
		this.proposed = proposed;
		setDescription(Messages.ExportPackPage_Description);
	}

	@Override
	public void createControl(Composite parent) {
		Composite page = new Composite(parent, SWT.NONE);
		GridLayoutFactory.swtDefaults().numColumns(3).spacing(8, 8).margins(12, 12).applyTo(page);
		label(page, Messages.ExportPackPage_Rooms);
		what = new Combo(page, SWT.READ_ONLY | SWT.DROP_DOWN);
		what.add(NLS.bind(Messages.ExportPackPage_WholeHome, home.home().getName()));
		all.forEach(room -> what.add(room.room().getName()));
		what.select(all.indexOf(proposed) + 1);
		GridDataFactory.fillDefaults().grab(true, false).span(2, 1).hint(420, SWT.DEFAULT).applyTo(what);
		what.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> chosen()));
		label(page, Messages.ExportPackPage_Folder);
		folder = new Text(page, SWT.BORDER);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(folder);
		folder.addModifyListener(event -> {
			ownFolder |= !writingFolder;
			validate();
		});
		Button browse = new Button(page, SWT.PUSH);
		browse.setText(Messages.ExportPackPage_Browse);
		setButtonLayoutData(browse);
		browse.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> browse()));
		findings = new Label(page, SWT.WRAP);
		GridDataFactory.fillDefaults().grab(true, false).span(3, 1).indent(0, 6).hint(420, SWT.DEFAULT).applyTo(findings);
		open = new Button(page, SWT.CHECK);
		open.setText(Messages.ExportPackPage_Open);
		open.setSelection(true);
		GridDataFactory.fillDefaults().span(3, 1).indent(0, 6).applyTo(open);
		Dialog.applyDialogFont(page);
		setControl(page);
		chosen();
	}

	/** Returns the rooms that go into the pack. */
	List<RoomSession> rooms() {
		int index = what.getSelectionIndex();
		return index <= 0 ? all : List.of(all.get(index - 1));
	}

	/** Returns where the pack goes. */
	Path folder() {
		return Path.of(folder.getText().strip());
	}

	/** Tells whether the pack is to be opened when it is written. */
	boolean opensWhenDone() {
		return open.getSelection();
	}

	private static void label(Composite page, String text) {
		Label label = new Label(page, SWT.NONE);
		label.setText(text);
		GridDataFactory.fillDefaults().align(SWT.BEGINNING, SWT.CENTER).applyTo(label);
	}

	private void browse() {
		DirectoryDialog dialog = new DirectoryDialog(getShell());
		dialog.setText(Messages.ExportPackPage_FolderTitle);
		dialog.setMessage(Messages.ExportPackPage_FolderMessage);
		String chosen = dialog.open();
		if (chosen != null) {
			folder.setText(chosen);
		}
	}

	private void chosen() {
		if (!ownFolder) {
			writingFolder = true;
			String name = what.getSelectionIndex() <= 0 ? FOLDER
				: FOLDER + '-' + FileNames.stem(rooms().get(0).room().getName(), FOLDER);
			folder.setText(home.project().getLocation().toPath().resolve(name).toString());
			writingFolder = false;
		}
		FindingCounts counts = FindingCounts.of(rooms().stream().flatMap(room -> room.findings().stream()).toList());
		findings.setText(counts.counts().containsKey(Severity.ERROR) ? NLS.bind(Messages.ExportPackPage_OpenErrors, counts.words())
			: NLS.bind(Messages.ExportPackPage_OpenFindings, counts.words()));
		validate();
	}

	private void validate() {
		String problem = problem();
		setErrorMessage(problem);
		setPageComplete(problem == null);
	}

	private String problem() {
		if (all.isEmpty()) {
			return Messages.ExportPackPage_NoRooms;
		}
		try {
			if (!folder().isAbsolute()) {
				return Messages.ExportPackPage_FolderNotAbsolute;
			}
			return Files.isRegularFile(folder()) ? NLS.bind(Messages.ExportPackPage_FolderIsFile, folder()) : null;
		} catch (InvalidPathException e) {
			return NLS.bind(Messages.ExportPackPage_FolderWrong, folder.getText());
		}
	}
}
