// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.properties;

import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.action.StatusLineManager;
import org.eclipse.jface.action.ToolBarManager;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.eclipse.ui.views.properties.IPropertySourceProvider;
import org.eclipse.ui.views.properties.PropertySheetPage;

/** The platform's table of properties without its tool bar, in the order of the trade. */
final class PropertyTable extends PropertySheetPage {

	/**
	 * Creates a table.
	 *
	 * @param parent   what it lies on
	 * @param sources  makes properties of what is shown
	 * @param messages takes what the table refuses
	 */
	PropertyTable(Composite parent, IPropertySourceProvider sources, StatusLineManager messages) {
		setSorter(new OrderAsGiven());
		setPropertySourceProvider(sources);
		createControl(parent);
		makeContributions(new MenuManager(), new ToolBarManager(), messages);
	}

	/** Shows the properties of something, all headings open. */
	void show(Object subject) {
		selectionChanged(null, new StructuredSelection(subject));
		openAll();
		// a heading whose rows were all replaced closes again by itself when the tree is drawn
		getControl().getDisplay().asyncExec(this::openAll);
	}

	private void openAll() {
		if (getControl() instanceof Tree tree && !tree.isDisposed()) {
			for (TreeItem heading : tree.getItems()) {
				open(tree, heading);
			}
		}
	}

	/** The table makes the rows below a heading when it is opened by hand, so it has to be told. */
	private static void open(Tree tree, TreeItem heading) {
		if (heading.getItemCount() > 0) {
			Event event = new Event();
			event.item = heading;
			tree.notifyListeners(SWT.Expand, event);
			heading.setExpanded(true);
		}
	}
}
