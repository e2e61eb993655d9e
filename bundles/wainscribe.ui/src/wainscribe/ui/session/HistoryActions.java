// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.session;

import static java.util.Objects.requireNonNull;

import java.util.EventObject;

import org.eclipse.emf.common.command.CommandStack;
import org.eclipse.emf.common.command.CommandStackListener;
import org.eclipse.jface.action.Action;
import org.eclipse.osgi.util.NLS;
import org.eclipse.ui.IActionBars;
import org.eclipse.ui.actions.ActionFactory;

/**
 * Undo and redo of whatever a view shows at the moment, named after the step: "Undo Change Width". Serves the workbench's own
 * menu entries, tool buttons and keys while the view is active.
 */
public final class HistoryActions {

	private final IActionBars bars;
	private final Step undo = new Step(() -> history().undo());
	private final Step redo = new Step(() -> history().redo());
	private final CommandStackListener listener = this::refresh;
	private CommandStack history;

	private HistoryActions(IActionBars bars) {
		this.bars = requireNonNull(bars);
	}

	/**
	 * Puts undo and redo into the action bars of a part.
	 *
	 * @param bars of the part's site
	 * @return the actions, which follow no history yet
	 */
	public static HistoryActions install(IActionBars bars) {
		HistoryActions actions = new HistoryActions(bars);
		bars.setGlobalActionHandler(ActionFactory.UNDO.getId(), actions.undo);
		bars.setGlobalActionHandler(ActionFactory.REDO.getId(), actions.redo);
		actions.refresh(null);
		return actions;
	}

	/**
	 * Follows another history.
	 *
	 * @param other the history to undo and redo, null for none
	 */
	public void follow(CommandStack other) {
		// a history that is just telling its listeners does not bear to lose or gain one
		if (history != other) {
			if (history != null) {
				history.removeCommandStackListener(listener);
			}
			history = other;
			if (history != null) {
				history.addCommandStackListener(listener);
			}
		}
		refresh(null);
	}

	private CommandStack history() {
		return history;
	}

	private void refresh(@SuppressWarnings("unused") EventObject event) {
		boolean canUndo = history != null && history.canUndo();
		boolean canRedo = history != null && history.canRedo();
		undo.show(canUndo, canUndo ? NLS.bind(Messages.HistoryActions_UndoStep, history.getUndoCommand().getLabel())
			: Messages.HistoryActions_Undo);
		redo.show(canRedo, canRedo ? NLS.bind(Messages.HistoryActions_RedoStep, history.getRedoCommand().getLabel())
			: Messages.HistoryActions_Redo);
		bars.updateActionBars();
	}

	/** One of the two directions. */
	private static final class Step extends Action {

		private final Runnable step;

		Step(Runnable step) {
			this.step = step;
		}

		void show(boolean enabled, String text) {
			setEnabled(enabled);
			setText(text);
			setToolTipText(text.replace("&", "")); //$NON-NLS-1$ //$NON-NLS-2$
		}

		@Override
		public void run() {
			step.run();
		}
	}
}
