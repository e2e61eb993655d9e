// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.survey;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

import org.eclipse.core.resources.IProject;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.Platform;
import org.eclipse.jface.dialogs.Dialog;
import org.eclipse.jface.dialogs.IMessageProvider;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.wizard.WizardPage;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.BusyIndicator;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

import wainscribe.layout.pattern.PatternDescriptor;
import wainscribe.layout.pattern.PatternReader;
import wainscribe.model.Room;
import wainscribe.survey.SurveyProblem;
import wainscribe.survey.SurveyReader;
import wainscribe.ui.session.HomeSession;
import wainscribe.ui.session.HomeSessions;
import wainscribe.ui.session.RoomSession;

/** Asks for the survey file and shows its rows, its problems and what would change, before anything is written. */
final class SurveyPage extends WizardPage {

	private static final int PREVIEW_WIDTH = 980;
	private static final int PREVIEW_HEIGHT = 260;
	private static final int PAUSE_MILLISECONDS = 300;

	private final HomeSessions sessions;
	private final List<IProject> homes;
	private final IProject proposed;
	private final Runnable look = this::look;
	private Combo home;
	private Text file;
	private SurveyTableViewer rows;
	private Label outcomeHeading;
	private Text outcome;
	private SurveyPreview preview;

	/**
	 * Creates the page.
	 *
	 * @param sessions the homes of the workspace
	 * @param proposed the home chosen at first, null for the first one
	 */
	SurveyPage(HomeSessions sessions, IProject proposed) {
		super("survey", Messages.SurveyPage_Title, null); //$NON-NLS-1$
		this.sessions = sessions;
		this.homes = sessions.homes();
		this.proposed = proposed;
		setDescription(Messages.SurveyPage_Description);
		setPageComplete(false);
	}

	/** Returns the ids that a survey may name as wall patterns. */
	static Set<String> patterns() {
		return new PatternReader(Platform.getExtensionRegistry()).read().all().stream().map(PatternDescriptor::id)
			.collect(Collectors.toUnmodifiableSet());
	}

	@Override
	public void createControl(Composite parent) {
		Composite page = new Composite(parent, SWT.NONE);
		GridLayoutFactory.swtDefaults().numColumns(3).spacing(8, 8).margins(12, 12).applyTo(page);
		createInputs(page);
		Label heading = new Label(page, SWT.NONE);
		heading.setText(Messages.SurveyPage_Rows);
		GridDataFactory.fillDefaults().span(3, 1).applyTo(heading);
		rows = new SurveyTableViewer(page);
		GridDataFactory.fillDefaults().grab(true, true).span(3, 1).hint(PREVIEW_WIDTH, PREVIEW_HEIGHT)
			.applyTo(rows.viewer().getControl().getParent());
		outcomeHeading = new Label(page, SWT.NONE);
		GridDataFactory.fillDefaults().grab(true, false).span(3, 1).applyTo(outcomeHeading);
		outcome = new Text(page, SWT.MULTI | SWT.READ_ONLY | SWT.WRAP | SWT.V_SCROLL | SWT.BORDER);
		GridDataFactory.fillDefaults().grab(true, false).span(3, 1).hint(PREVIEW_WIDTH, outcome.getLineHeight() * 5).applyTo(outcome);
		Dialog.applyDialogFont(page);
		setControl(page);
		show(null);
		if (homes.isEmpty()) {
			setErrorMessage(Messages.SurveyPage_NoHome);
		}
	}

	/** Returns the home that the survey goes into. */
	IProject home() {
		return homes.get(home.getSelectionIndex());
	}

	/** Returns the survey file. */
	Path file() {
		return Path.of(file.getText().strip());
	}

	/** Says why the survey could not be brought in. */
	void refuse(String reason) {
		setErrorMessage(reason);
	}

	private void createInputs(Composite page) {
		label(page, Messages.SurveyPage_Home);
		home = new Combo(page, SWT.READ_ONLY | SWT.DROP_DOWN);
		home.setItems(homes.stream().map(this::nameOf).toArray(String[]::new));
		home.select(Math.max(0, homes.indexOf(proposed)));
		GridDataFactory.fillDefaults().grab(true, false).span(2, 1).applyTo(home);
		home.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> look()));
		label(page, Messages.SurveyPage_File);
		file = new Text(page, SWT.BORDER);
		file.setMessage(Messages.SurveyPage_FileHint);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(file);
		file.addModifyListener(event -> {
			setPageComplete(false);
			file.getDisplay().timerExec(PAUSE_MILLISECONDS, look);
		});
		Button browse = new Button(page, SWT.PUSH);
		browse.setText(Messages.SurveyPage_Browse);
		setButtonLayoutData(browse);
		browse.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> browse()));
	}

	private String nameOf(IProject project) {
		try {
			HomeSession session = sessions.openHome(project);
			try {
				return session.home().getName() == null ? project.getName() : session.home().getName();
			} finally {
				sessions.close(session);
			}
		} catch (CoreException e) {
			return project.getName();
		}
	}

	private static void label(Composite page, String text) {
		Label label = new Label(page, SWT.NONE);
		label.setText(text);
		GridDataFactory.fillDefaults().align(SWT.BEGINNING, SWT.CENTER).applyTo(label);
	}

	private void browse() {
		FileDialog dialog = new FileDialog(getShell(), SWT.OPEN);
		dialog.setText(Messages.SurveyPage_FileTitle);
		dialog.setFilterNames(new String[] { Messages.SurveyPage_CsvFiles, Messages.SurveyPage_AllFiles });
		dialog.setFilterExtensions(new String[] { "*.csv;*.CSV", "*" }); //$NON-NLS-1$ //$NON-NLS-2$
		String chosen = dialog.open();
		if (chosen != null) {
			file.setText(chosen);
			look();
		}
	}

	/** Reads the file and shows what is in it. */
	private void look() {
		if (file.isDisposed()) {
			return;
		}
		file.getDisplay().timerExec(-1, look);
		Optional<Path> chosen = chosen();
		if (chosen.isEmpty() || homes.isEmpty()) {
			show(null);
			return;
		}
		BusyIndicator.showWhile(file.getDisplay(), () -> read(chosen.get()));
	}

	private void read(Path chosen) {
		HomeSession session = null;
		try {
			session = sessions.openHome(home());
			List<Room> rooms = session.rooms().stream().map(RoomSession::room).toList();
			show(SurveyPreview.of(chosen, new SurveyReader(patterns()), session.home(), rooms));
			if (preview.isUsable() && session.rooms().stream().anyMatch(RoomSession::isDirty)) {
				setMessage(Messages.SurveyPage_UnsavedFirst, IMessageProvider.WARNING);
			}
		} catch (CoreException e) {
			show(null);
			setErrorMessage(e.getStatus().getMessage());
		} catch (IOException e) {
			show(null);
			setErrorMessage(e.getLocalizedMessage());
		} finally {
			if (session != null) {
				sessions.close(session);
			}
		}
	}

	private Optional<Path> chosen() {
		try {
			return Optional.of(file()).filter(Files::isRegularFile);
		} catch (InvalidPathException e) {
			return Optional.empty();
		}
	}

	private void show(SurveyPreview other) {
		preview = other;
		setErrorMessage(null);
		setMessage(null);
		rows.show(other == null ? List.of() : other.lines());
		boolean usable = other != null && other.isUsable();
		outcomeHeading.setText(other == null || usable ? Messages.SurveyPage_Outcome : Messages.SurveyPage_Problems);
		if (other == null) {
			boolean typed = file != null && !file.getText().isBlank();
			outcome.setText(Messages.SurveyPage_NothingYet);
			setErrorMessage(typed ? NLS.bind(Messages.SurveyPage_NoFile, file.getText()) : null);
		} else if (usable) {
			outcome.setText(String.join("\n", ChangeWords.of(other.changes())) + warnings(other)); //$NON-NLS-1$
		} else {
			long errors = other.survey().problems().stream().filter(SurveyProblem::isError).count();
			setErrorMessage(NLS.bind(errors == 1 ? Messages.SurveyPage_RefusedOnce : Messages.SurveyPage_Refused, String.valueOf(errors)));
			outcome.setText(problems(other, true) + warnings(other));
		}
		setPageComplete(usable && !other.changes().isEmpty());
	}

	private static String warnings(SurveyPreview preview) {
		String warnings = problems(preview, false);
		return warnings.isEmpty() ? "" : "\n" + warnings; //$NON-NLS-1$ //$NON-NLS-2$
	}

	private static String problems(SurveyPreview preview, boolean errors) {
		String file = Path.of(preview.survey().file()).getFileName().toString();
		return preview.survey().problems().stream().filter(problem -> problem.isError() == errors)
			.map(problem -> errors ? problem.inFile(file) : NLS.bind(Messages.SurveyPage_Doubtful, problem.inFile(file)))
			.collect(Collectors.joining("\n")); //$NON-NLS-1$
	}
}
