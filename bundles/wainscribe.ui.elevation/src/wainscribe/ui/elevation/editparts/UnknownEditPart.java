// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.editparts;

import java.util.Optional;

import wainscribe.model.Wall;
import wainscribe.model.outline.Outline;
import wainscribe.ui.elevation.table.DrawingTable;

/** Stands for something that cannot be shown; takes no place. */
final class UnknownEditPart extends ThingEditPart {

	UnknownEditPart(DrawingTable table, Object model) {
		super(table, model);
	}

	@Override
	public Wall wall() {
		return (Wall) getParent().getModel();
	}

	@Override
	public Optional<Outline> outline() {
		return Optional.empty();
	}

	@Override
	public String name() {
		return ""; //$NON-NLS-1$
	}

	@Override
	public String value() {
		return ""; //$NON-NLS-1$
	}

	@Override
	public boolean isCalled(String word) {
		return false;
	}
}
