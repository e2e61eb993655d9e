// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.tools;

import org.eclipse.gef.EditDomain;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.KeyEvent;

import wainscribe.model.length.Length;
import wainscribe.ui.drafting.history.ModelCommand;
import wainscribe.ui.elevation.gaps.GapChange;
import wainscribe.ui.elevation.table.DrawingTable;

/**
 * Sets the gap of the room by keys: the full stop makes it wider and the comma narrower by one tape mark, with Ctrl or Shift by
 * ten; with Alt it is the gap above and below frames.
 */
final class GapKeys {

	private static final int MANY = 10;

	private GapKeys() {
	}

	/** Widens or narrows the gap; tells whether there was one. */
	static boolean press(EditDomain domain, DrawingTable table, KeyEvent event) {
		int marks = (event.stateMask & (SWT.MOD1 | SWT.SHIFT)) != 0 ? MANY : 1;
		Length wider = table.units().tapeMark().times(event.keyCode == '.' ? marks : -marks);
		boolean upright = (event.stateMask & SWT.ALT) != 0;
		return new GapChange(table, upright).by(wider).map(command -> {
			domain.getCommandStack().execute(new ModelCommand(command));
			return true;
		}).orElse(false);
	}
}
