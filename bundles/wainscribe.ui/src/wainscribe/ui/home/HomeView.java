// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.home;

import org.eclipse.core.runtime.ILog;
import org.eclipse.emf.common.command.CommandStack;
import org.eclipse.jface.action.GroupMarker;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.jface.viewers.SelectionChangedEvent;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.IWorkbenchActionConstants;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.part.ViewPart;

import wainscribe.ui.ProfileEditors;
import wainscribe.ui.RoomEditors;
import wainscribe.ui.session.HistoryActions;
import wainscribe.ui.session.HomeProfile;
import wainscribe.ui.session.HomeSession;
import wainscribe.ui.session.HomeSessions;
import wainscribe.ui.session.RoomSession;

/** The homes of the workspace, their rooms, each with how far it is, and their own profiles. */
public final class HomeView extends ViewPart {

	/** Id of the view and of its context menu. */
	public static final String ID = "wainscribe.ui.home"; //$NON-NLS-1$

	private final StackLayout pages = new StackLayout();
	private Composite body;
	private HomeTree tree;
	private NoHomesPage noHomes;
	private HistoryActions history;
	private OpenHomes homes;

	@Override
	public void createPartControl(Composite parent) {
		body = new Composite(parent, SWT.NONE);
		body.setLayout(pages);
		homes = new OpenHomes(getSite().getService(HomeSessions.class), this::refresh);
		history = HistoryActions.install(getViewSite().getActionBars());
		tree = new HomeTree(body);
		noHomes = new NoHomesPage(body, getSite());
		tree.viewer().addSelectionChangedListener(this::selected);
		tree.viewer().addOpenListener(event -> open((IStructuredSelection) event.getSelection()));
		getSite().setSelectionProvider(tree.viewer());
		installMenu();
		homes.follow();
	}

	@Override
	public void setFocus() {
		pages.topControl.setFocus();
	}

	@Override
	public void dispose() {
		if (history != null) {
			history.follow(null);
		}
		if (homes != null) {
			homes.close();
		}
		super.dispose();
	}

	/** Called when homes come or go, and when the state of a room changes. */
	private void refresh(OpenHomes.News news) {
		if (body.isDisposed()) {
			return;
		}
		if (news.room() != null) {
			tree.update(news.room());
			return;
		}
		tree.show(homes.shown());
		pages.topControl = homes.shown().isEmpty() ? noHomes.control() : tree.viewer().getControl();
		body.layout();
	}

	private void selected(SelectionChangedEvent event) {
		Object first = event.getStructuredSelection().getFirstElement();
		CommandStack stack = switch (first) {
			case HomeSession home -> home.commandStack();
			case RoomSession room -> room.commandStack();
			case null, default -> null;
		};
		history.follow(stack);
	}

	private void open(IStructuredSelection selection) {
		if (selection.getFirstElement() instanceof RoomSession room) {
			try {
				RoomEditors.open(getSite().getPage(), room, true);
			} catch (PartInitException e) {
				ILog.get().log(e.getStatus());
			}
		} else if (selection.getFirstElement() instanceof HomeProfile profile) {
			open(profile);
		} else if (selection.getFirstElement() != null) {
			tree.toggle(selection.getFirstElement());
		}
	}

	private void open(HomeProfile profile) {
		try {
			ProfileEditors.open(getSite().getPage(), profile.file());
		} catch (PartInitException e) {
			ILog.get().log(e.getStatus());
		}
	}

	private void installMenu() {
		MenuManager menu = new MenuManager();
		menu.add(new GroupMarker(IWorkbenchActionConstants.MB_ADDITIONS));
		tree.viewer().getControl().setMenu(menu.createContextMenu(tree.viewer().getControl()));
		getSite().registerContextMenu(ID, menu, tree.viewer());
	}
}
