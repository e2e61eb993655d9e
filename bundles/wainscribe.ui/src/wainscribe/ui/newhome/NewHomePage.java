// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.newhome;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.Year;
import java.util.List;

import org.eclipse.emf.ecore.util.EcoreUtil;
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

import wainscribe.model.Home;
import wainscribe.model.WainscribeFactory;
import wainscribe.model.length.LengthUnit;
import wainscribe.model.storage.FileNames;
import wainscribe.model.storage.HomeFolder;

/** Asks what has to be known of a home before it is measured. */
final class NewHomePage extends WizardPage {

	private static final String FALLBACK = "home"; //$NON-NLS-1$
	private static final int OLDEST_HOUSE = 1000;

	private final Path workspace;
	private final List<Country> countries = Country.all();
	private Text name;
	private Combo country;
	private Button inches;
	private Button millimetres;
	private Text built;
	private Text folder;
	private Button rooms;
	private boolean ownFolder;
	private boolean ownUnits;
	private boolean writingFolder;

	/**
	 * Creates the page.
	 *
	 * @param workspace folder that homes lie in unless another is chosen
	 */
	NewHomePage(Path workspace) {
		super("home", Messages.NewHomePage_Title, null); //$NON-NLS-1$
		this.workspace = workspace;
		setDescription(Messages.NewHomePage_Description);
	}

	@Override
	public void createControl(Composite parent) {
		Composite page = new Composite(parent, SWT.NONE);
		GridLayoutFactory.swtDefaults().numColumns(3).spacing(8, 8).margins(12, 12).applyTo(page);
		createWho(page);
		createUnits(page);
		createHouse(page);
		createFolder(page);
		rooms = new Button(page, SWT.CHECK);
		rooms.setText(Messages.NewHomePage_ThenRooms);
		rooms.setSelection(true);
		GridDataFactory.fillDefaults().span(3, 1).indent(0, 8).applyTo(rooms);
		Dialog.applyDialogFont(page);
		setControl(page);
		proposeUnits();
		proposeFolder();
		validate();
		setErrorMessage(null);
	}

	/** Returns what was entered as a home. */
	Home home() {
		Home home = WainscribeFactory.eINSTANCE.createHome();
		home.setId(EcoreUtil.generateUUID());
		home.setName(name.getText().strip());
		home.setCountry(chosenCountry().code());
		home.setUnits(inches.getSelection() ? LengthUnit.INCH : LengthUnit.MILLIMETRE);
		home.setBuilt(built.getText().isBlank() ? null : Integer.valueOf(built.getText().strip()));
		return home;
	}

	/** Returns where it is to lie. */
	Path folder() {
		return Path.of(folder.getText().strip());
	}

	/** Tells whether the rooms are to be added next. */
	boolean wantsRooms() {
		return rooms.getSelection();
	}

	private void createWho(Composite page) {
		label(page, Messages.NewHomePage_Name);
		name = new Text(page, SWT.BORDER);
		name.setMessage(Messages.NewHomePage_NameHint);
		GridDataFactory.fillDefaults().grab(true, false).span(2, 1).hint(360, SWT.DEFAULT).applyTo(name);
		name.addModifyListener(event -> {
			proposeFolder();
			validate();
		});
		label(page, Messages.NewHomePage_Country);
		country = new Combo(page, SWT.READ_ONLY | SWT.DROP_DOWN);
		country.setItems(countries.stream().map(Country::name).toArray(String[]::new));
		country.select(Math.max(0, countries.indexOf(Country.here())));
		GridDataFactory.fillDefaults().grab(true, false).span(2, 1).applyTo(country);
		country.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> proposeUnits()));
	}

	private void createUnits(Composite page) {
		label(page, Messages.NewHomePage_Units);
		Composite units = new Composite(page, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(2).spacing(16, 0).applyTo(units);
		GridDataFactory.fillDefaults().span(2, 1).applyTo(units);
		inches = new Button(units, SWT.RADIO);
		inches.setText(Messages.NewHomePage_Inches);
		millimetres = new Button(units, SWT.RADIO);
		millimetres.setText(Messages.NewHomePage_Millimetres);
		SelectionListener chosen = SelectionListener.widgetSelectedAdapter(event -> ownUnits = true);
		inches.addSelectionListener(chosen);
		millimetres.addSelectionListener(chosen);
	}

	private void createHouse(Composite page) {
		label(page, Messages.NewHomePage_Built);
		built = new Text(page, SWT.BORDER);
		built.setMessage(Messages.NewHomePage_BuiltHint);
		GridDataFactory.fillDefaults().span(2, 1).hint(160, SWT.DEFAULT).align(SWT.BEGINNING, SWT.CENTER).applyTo(built);
		built.addModifyListener(event -> validate());
	}

	private void createFolder(Composite page) {
		label(page, Messages.NewHomePage_Folder);
		folder = new Text(page, SWT.BORDER);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(folder);
		folder.addModifyListener(event -> {
			ownFolder |= !writingFolder;
			validate();
		});
		Button browse = new Button(page, SWT.PUSH);
		browse.setText(Messages.NewHomePage_Browse);
		setButtonLayoutData(browse);
		browse.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> browse()));
	}

	private void browse() {
		DirectoryDialog dialog = new DirectoryDialog(getShell());
		dialog.setText(Messages.NewHomePage_FolderTitle);
		dialog.setMessage(Messages.NewHomePage_FolderMessage);
		String chosen = dialog.open();
		if (chosen != null) {
			folder.setText(chosen);
		}
	}

	private static void label(Composite page, String text) {
		Label label = new Label(page, SWT.NONE);
		label.setText(text);
		GridDataFactory.fillDefaults().align(SWT.BEGINNING, SWT.CENTER).applyTo(label);
	}

	private Country chosenCountry() {
		return countries.get(country.getSelectionIndex());
	}

	/** What the country's carpenters use, until the designer chose herself. */
	private void proposeUnits() {
		if (!ownUnits) {
			boolean feet = chosenCountry().units() == LengthUnit.INCH;
			inches.setSelection(feet);
			millimetres.setSelection(!feet);
		}
	}

	/** A folder named after the home, until the designer chose one herself. */
	private void proposeFolder() {
		if (!ownFolder) {
			writingFolder = true;
			String stem = FileNames.unique(FileNames.stem(name.getText(), FALLBACK), taken -> Files.exists(workspace.resolve(taken)));
			folder.setText(workspace.resolve(stem).toString());
			writingFolder = false;
		}
	}

	private void validate() {
		String problem = problem();
		setErrorMessage(problem);
		setPageComplete(problem == null);
	}

	private String problem() {
		if (name.getText().isBlank()) {
			return Messages.NewHomePage_NameMissing;
		}
		if (!built.getText().isBlank() && !isYear(built.getText().strip())) {
			return NLS.bind(Messages.NewHomePage_BuiltWrong, new Object[] { built.getText(), String.valueOf(OLDEST_HOUSE), Year.now().toString() });
		}
		try {
			Path chosen = Path.of(folder.getText().strip());
			if (!chosen.isAbsolute()) {
				return Messages.NewHomePage_FolderNotAbsolute;
			}
			if (HomeFolder.isHome(chosen)) {
				return NLS.bind(Messages.NewHomePage_FolderIsHome, chosen);
			}
			return Files.isRegularFile(chosen) ? NLS.bind(Messages.NewHomePage_FolderIsFile, chosen) : null;
		} catch (InvalidPathException e) {
			return NLS.bind(Messages.NewHomePage_FolderWrong, folder.getText());
		}
	}

	private static boolean isYear(String text) {
		return text.matches("\\d{4}") && Integer.parseInt(text) >= OLDEST_HOUSE && Integer.parseInt(text) <= Year.now().getValue(); //$NON-NLS-1$
	}
}
