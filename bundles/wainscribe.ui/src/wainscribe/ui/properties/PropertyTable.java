// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.properties;

import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.action.StatusLineManager;
import org.eclipse.jface.action.ToolBarManager;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.swt.widgets.Composite;
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

	/** Shows the properties of something. */
	void show(Object subject) {
		selectionChanged(null, new StructuredSelection(subject));
	}
}
