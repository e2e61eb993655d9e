// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.properties;

import org.eclipse.ui.views.properties.IPropertySheetEntry;
import org.eclipse.ui.views.properties.PropertySheetSorter;

/** Leaves properties in the order in which their source names them: the trade's order, not the alphabet's. */
final class OrderAsGiven extends PropertySheetSorter {

	@Override
	public int compareCategories(String categoryA, String categoryB) {
		return 0;
	}

	@Override
	public void sort(IPropertySheetEntry[] entries) {
		// they come in their order
	}
}
