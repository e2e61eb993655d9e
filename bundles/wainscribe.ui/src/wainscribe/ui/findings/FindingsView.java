// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.findings;

import java.util.List;

import org.eclipse.jface.action.GroupMarker;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.IWorkbenchActionConstants;
import org.eclipse.ui.part.ViewPart;

import wainscribe.ui.Icon;
import wainscribe.ui.findings.FindingsSource.RoomFinding;
import wainscribe.ui.session.HistoryActions;
import wainscribe.ui.session.RoomSession;
import wainscribe.ui.session.RoomTracker;

/** What the rules find in the room, or the home, that is looked at; up to date a moment after each edit. */
public final class FindingsView extends ViewPart {

	/** Id of the view and of its context menu. */
	public static final String ID = "wainscribe.ui.findings"; //$NON-NLS-1$

	private static final int[] LIST_AND_DETAIL = { 68, 32 };

	private final StackLayout pages = new StackLayout();
	private final FindingsSource source = new FindingsSource(this::refresh);
	private Composite body;
	private SashForm split;
	private FindingsTree tree;
	private FindingDetail detail;
	private EmptyPage empty;
	private FindingsActions actions;
	private HistoryActions history;
	private RoomTracker tracker;
	private FindingReveal reveal;
	private boolean refreshing;

	@Override
	public void createPartControl(Composite parent) {
		body = new Composite(parent, SWT.NONE);
		body.setLayout(pages);
		split = new SashForm(body, SWT.HORIZONTAL);
		tree = new FindingsTree(split);
		detail = new FindingDetail(split);
		split.setWeights(LIST_AND_DETAIL);
		empty = new EmptyPage(body);
		history = HistoryActions.install(getViewSite().getActionBars());
		actions = new FindingsActions(tree, this::look);
		actions.fill(getViewSite().getActionBars());
		reveal = new FindingReveal(getSite().getPage());
		tree.viewer().addSelectionChangedListener(event -> selected(event.getStructuredSelection()));
		tree.viewer().addOpenListener(event -> reveal.open((IStructuredSelection) event.getSelection()));
		getSite().setSelectionProvider(tree.viewer());
		installMenu();
		tracker = new RoomTracker(getSite().getPage(), this::look);
		look();
	}

	@Override
	public void setFocus() {
		pages.topControl.setFocus();
	}

	@Override
	public void dispose() {
		source.follow(List.of());
		if (tracker != null) {
			tracker.stop();
			history.follow(null);
		}
		super.dispose();
	}

	/** Goes over to the room or home that is looked at. */
	private void look() {
		history.follow(tracker.room().map(RoomSession::commandStack).orElse(null));
		boolean whole = actions.isWholeHome() || tracker.room().isEmpty();
		source.follow(whole ? tracker.home().map(home -> home.rooms()).orElse(List.of()) : tracker.room().stream().toList());
		refresh();
	}

	private void refresh() {
		if (body.isDisposed()) {
			return;
		}
		List<RoomFinding> findings = source.findings();
		// the same findings stay selected, which must not draw the designer away from what she is editing
		refreshing = true;
		tree.show(findings);
		refreshing = false;
		actions.count(findings);
		setContentDescription(findings.isEmpty() ? "" : NLS.bind(Messages.FindingsView_Summary, name(), counts(findings))); //$NON-NLS-1$
		if (findings.isEmpty()) {
			sayWhyEmpty();
		}
		pages.topControl = findings.isEmpty() ? empty.control() : split;
		body.layout();
	}

	private void sayWhyEmpty() {
		if (source.rooms().isEmpty()) {
			empty.say(Icon.ROOM, tracker.home().isPresent() ? Messages.FindingsView_NoRooms : Messages.FindingsView_NoRoom);
		} else if (source.isChecked()) {
			empty.say(Icon.IN_ORDER, NLS.bind(Messages.FindingsView_InOrder, name()));
		} else {
			empty.say(Icon.ROOM, NLS.bind(Messages.FindingsView_Checking, name()));
		}
	}

	private String name() {
		return source.rooms().size() == 1 ? source.rooms().get(0).room().getName()
			: source.home().map(home -> home.home().getName()).orElse(""); //$NON-NLS-1$
	}

	private static String counts(List<RoomFinding> findings) {
		return FindingCounts.of(findings.stream().map(RoomFinding::finding).toList()).words();
	}

	private void selected(IStructuredSelection selection) {
		if (selection.size() == 1 && selection.getFirstElement() instanceof RoomFinding found) {
			detail.show(found.finding());
			if (!refreshing) {
				reveal.show(found);
			}
		} else {
			detail.clear();
		}
	}

	private void installMenu() {
		MenuManager menu = new MenuManager();
		menu.add(new GroupMarker(IWorkbenchActionConstants.MB_ADDITIONS));
		actions.fill(menu);
		tree.viewer().getControl().setMenu(menu.createContextMenu(tree.viewer().getControl()));
		getSite().registerContextMenu(ID, menu, tree.viewer());
	}
}
