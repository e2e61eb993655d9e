// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.home;

import java.util.List;
import java.util.stream.Stream;

import org.eclipse.jface.viewers.ColumnViewerToolTipSupport;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.jface.viewers.ITreeContentProvider;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.jface.viewers.TreeViewerColumn;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.ControlListener;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Tree;

import wainscribe.ui.SpokenName;
import wainscribe.ui.session.HomeProfile;
import wainscribe.ui.session.HomeSession;
import wainscribe.ui.session.RoomSession;

/** The tree of homes, their rooms and their own profiles. */
final class HomeTree {

	private final TreeViewer viewer;
	private List<Object> known = List.of();

	HomeTree(Composite parent) {
		viewer = new TreeViewer(parent, SWT.SINGLE | SWT.V_SCROLL | SWT.FULL_SELECTION);
		viewer.setContentProvider(new Content());
		viewer.setUseHashlookup(true);
		TreeViewerColumn column = new TreeViewerColumn(viewer, SWT.NONE);
		column.setLabelProvider(new HomeRowPainter(viewer.getControl()));
		Tree tree = viewer.getTree();
		tree.addControlListener(ControlListener.controlResizedAdapter(event -> column.getColumn().setWidth(tree.getClientArea().width)));
		SpokenName.give(tree, Messages.HomeTree_Name);
		ColumnViewerToolTipSupport.enableFor(viewer);
	}

	TreeViewer viewer() {
		return viewer;
	}

	/** Shows homes; what was selected and closed stays so, what is new comes open. */
	void show(List<Object> homes) {
		IStructuredSelection selection = viewer.getStructuredSelection();
		List<Object> closed = known.stream().filter(home -> !viewer.getExpandedState(home)).toList();
		viewer.setInput(homes);
		viewer.expandAll();
		closed.stream().filter(homes::contains).forEach(home -> viewer.setExpandedState(home, false));
		viewer.setSelection(selection);
		known = homes;
	}

	/** Paints one room anew, and its home, which sums up its rooms. */
	void update(RoomSession room) {
		viewer.update(new Object[] { room, room.homeSession() }, null);
	}

	/** Opens or closes a home. */
	void toggle(Object home) {
		viewer.setExpandedState(home, !viewer.getExpandedState(home));
	}

	/** Rooms below homes, then profiles. */
	private static final class Content implements ITreeContentProvider {

		@Override
		public Object[] getElements(Object input) {
			return ((List<?>) input).toArray();
		}

		@Override
		public Object[] getChildren(Object parent) {
			return parent instanceof HomeSession home ? Stream.concat(home.rooms().stream(), home.ownProfiles().stream()).toArray()
				: new Object[0];
		}

		@Override
		public Object getParent(Object element) {
			return switch (element) {
				case RoomSession room -> room.homeSession();
				case HomeProfile profile -> profile.home();
				default -> null;
			};
		}

		@Override
		public boolean hasChildren(Object element) {
			return element instanceof HomeSession home && !(home.rooms().isEmpty() && home.ownProfiles().isEmpty());
		}
	}
}
