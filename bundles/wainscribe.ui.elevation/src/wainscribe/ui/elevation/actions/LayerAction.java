// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.actions;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;

import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.IAction;

import wainscribe.ui.elevation.table.DrawingTable;
import wainscribe.ui.elevation.table.LayerGroup;

/** Shows or hides some layers of the drawing. */
public final class LayerAction extends Action {

	private final DrawingTable table;
	private final LayerGroup group;

	private LayerAction(DrawingTable table, LayerGroup group) {
		super(group.label(), IAction.AS_CHECK_BOX);
		this.table = Objects.requireNonNull(table);
		this.group = group;
		setChecked(table.shows(group.layers()));
	}

	/** Returns one for each group of layers. */
	public static List<LayerAction> all(DrawingTable table) {
		return Arrays.stream(LayerGroup.values()).map(group -> new LayerAction(table, group)).toList();
	}

	@Override
	public void run() {
		table.show(group.layers(), isChecked());
	}
}
