// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.findings;

import static java.util.Objects.requireNonNull;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.IAction;
import org.eclipse.jface.action.IContributionManager;
import org.eclipse.jface.action.Separator;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.ui.IActionBars;
import org.eclipse.ui.actions.ActionFactory;

import wainscribe.rules.Severity;
import wainscribe.ui.Icon;
import wainscribe.ui.findings.FindingsSource.RoomFinding;

/** What can be done with a list of findings: hide weights, look at the whole home, copy. */
final class FindingsActions {

	private final FindingsTree tree;
	private final IAction copy;
	private final IAction wholeHome;
	private final Map<Severity, IAction> filters = new EnumMap<>(Severity.class);

	/**
	 * Makes the actions.
	 *
	 * @param tree         the list
	 * @param scopeChanged told when the whole home is to be shown, or no longer
	 */
	FindingsActions(FindingsTree tree, Runnable scopeChanged) {
		this.tree = requireNonNull(tree);
		copy = action(Messages.FindingsActions_Copy, IAction.AS_PUSH_BUTTON, this::copy);
		wholeHome = action(Messages.FindingsActions_WholeHome, IAction.AS_CHECK_BOX, scopeChanged);
		wholeHome.setImageDescriptor(Icon.WHOLE_HOME.descriptor());
		for (Severity severity : Severity.values()) {
			IAction filter = action(FindingWords.of(severity), IAction.AS_CHECK_BOX, () -> filter(severity));
			filter.setImageDescriptor(Icon.of(severity).descriptor());
			filter.setChecked(true);
			filters.put(severity, filter);
		}
	}

	/** Puts the actions on a view's tool bar. */
	void fill(IActionBars bars) {
		bars.setGlobalActionHandler(ActionFactory.COPY.getId(), copy);
		filters.values().forEach(bars.getToolBarManager()::add);
		bars.getToolBarManager().add(new Separator());
		bars.getToolBarManager().add(wholeHome);
		bars.updateActionBars();
	}

	/** Puts the actions into a context menu. */
	void fill(IContributionManager menu) {
		menu.add(copy);
	}

	/** Tells whether the findings of all rooms are wanted. */
	boolean isWholeHome() {
		return wholeHome.isChecked();
	}

	/** Says on each filter how many there are. */
	void count(List<RoomFinding> findings) {
		filters.forEach((severity, filter) -> {
			int count = (int) findings.stream().filter(found -> found.finding().severity() == severity).count();
			filter.setToolTipText(NLS.bind(Messages.FindingsActions_Show, FindingCounts.counted(severity, count)));
		});
	}

	private void filter(Severity severity) {
		tree.setShown(severity, filters.get(severity).isChecked());
	}

	private void copy() {
		String text = tree.selectedOrAll().stream().map(found -> FindingWords.line(found.finding()))
			.collect(Collectors.joining(System.lineSeparator()));
		if (text.isEmpty()) {
			return;
		}
		Clipboard clipboard = new Clipboard(tree.viewer().getControl().getDisplay());
		try {
			clipboard.setContents(new Object[] { text }, new Transfer[] { TextTransfer.getInstance() });
		} finally {
			clipboard.dispose();
		}
	}

	private static IAction action(String text, int style, Runnable run) {
		IAction action = new Action(text, style) {

			@Override
			public void run() {
				run.run();
			}
		};
		action.setToolTipText(text.replace("&", "")); //$NON-NLS-1$ //$NON-NLS-2$
		return action;
	}
}
