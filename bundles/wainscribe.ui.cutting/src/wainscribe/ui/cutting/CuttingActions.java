// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.cutting;

import static java.util.Objects.requireNonNull;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;

import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.IAction;
import org.eclipse.jface.action.IContributionManager;
import org.eclipse.jface.action.Separator;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.program.Program;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;

import wainscribe.commands.AcceptCuttingPlanCommand;
import wainscribe.model.Home;
import wainscribe.report.CuttingSheets;
import wainscribe.takeoff.cutting.HomePlan;
import wainscribe.takeoff.cutting.PlanAcceptance;
import wainscribe.ui.session.HomeSession;

/** What can be done with a cutting plan: accept it, print its sheets, end the planning. */
final class CuttingActions {

	private static final String CUT_SHEET = "cut-sheet.pdf"; //$NON-NLS-1$
	private static final String LABELS = "piece-labels.pdf"; //$NON-NLS-1$

	private final Shell shell;
	private final PlanSource source;
	private final IAction accept;
	private final IAction stop;
	private final IAction sheet;
	private final IAction labels;

	/** Writes one sheet. */
	private interface Sheet {
		void write(CuttingSheets sheets, Home home, HomePlan plan, Path file) throws IOException;
	}

	CuttingActions(Shell shell, PlanSource source) {
		this.shell = requireNonNull(shell);
		this.source = requireNonNull(source);
		accept = action(Messages.CuttingActions_Accept, Messages.CuttingActions_AcceptTip, CuttingIcon.ACCEPT, this::accept);
		stop = action(Messages.CuttingActions_Stop, Messages.CuttingActions_StopTip, CuttingIcon.STOP, source::stop);
		sheet = action(Messages.CuttingActions_CutSheet, Messages.CuttingActions_CutSheetTip, CuttingIcon.CUT_SHEET,
				() -> print(CUT_SHEET, CuttingSheets::cutSheet));
		labels = action(Messages.CuttingActions_Labels, Messages.CuttingActions_LabelsTip, CuttingIcon.PIECE_LABELS,
				() -> print(LABELS, CuttingSheets::labels));
	}

	/** Puts the actions on a tool bar or into a menu. */
	void fill(IContributionManager manager) {
		manager.add(stop);
		manager.add(accept);
		manager.add(new Separator());
		manager.add(sheet);
		manager.add(labels);
	}

	/** Offers what can be done now. */
	void refresh() {
		Optional<HomePlan> plan = source.best();
		stop.setEnabled(source.isPlanning());
		accept.setEnabled(!source.isPlanning() && plan.filter(best -> !best.bars().isEmpty()).isPresent());
		boolean printable = plan.filter(best -> !best.bars().isEmpty() || !best.accepted().isEmpty()).isPresent();
		sheet.setEnabled(printable);
		labels.setEnabled(printable);
	}

	private void accept() {
		HomeSession home = source.home().orElseThrow();
		source.best().flatMap(plan -> PlanAcceptance.of(home.home(), plan)).ifPresent(acceptance -> home.commandStack()
				.execute(new AcceptCuttingPlanCommand(home.home(), acceptance.used(), acceptance.left(), acceptance.bars())));
	}

	private void print(String name, Sheet kind) {
		HomeSession home = source.home().orElseThrow();
		FileDialog dialog = new FileDialog(shell, SWT.SAVE);
		dialog.setFileName(name);
		dialog.setFilterExtensions(new String[] { "*.pdf" }); //$NON-NLS-1$
		dialog.setOverwrite(true);
		String chosen = dialog.open();
		if (chosen == null) {
			return;
		}
		try {
			kind.write(new CuttingSheets(home.profiles()), home.home(), source.best().orElseThrow(), Path.of(chosen));
			Program.launch(chosen);
		} catch (IOException e) {
			MessageDialog.openError(shell, null, NLS.bind(Messages.CuttingActions_Failed, e.getLocalizedMessage()));
		}
	}

	static IAction action(String text, String tip, CuttingIcon icon, Runnable run) {
		IAction action = new Action(text) {

			@Override
			public void run() {
				run.run();
			}
		};
		action.setToolTipText(tip);
		action.setImageDescriptor(icon.descriptor());
		return action;
	}
}
