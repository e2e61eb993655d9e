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
 * Sets the gap of the room by keys: W makes it wider and N narrower by one tape mark, with Shift by ten; U and D do the same with
 * the gap above and below frames.
 */
final class GapKeys {

	private static final int MANY = 10;

	private GapKeys() {
	}

	/** Widens or narrows the gap; tells whether there was one. */
	static boolean press(EditDomain domain, DrawingTable table, KeyEvent event) {
		if ((event.stateMask & (SWT.MOD1 | SWT.ALT)) != 0) {
			return false;
		}
		int marks = (event.stateMask & SWT.SHIFT) != 0 ? MANY : 1;
		boolean wider = event.keyCode == 'w' || event.keyCode == 'u';
		boolean upright = event.keyCode == 'u' || event.keyCode == 'd';
		Length by = table.units().tapeMark().times(wider ? marks : -marks);
		return new GapChange(table, upright).by(by).map(command -> {
			domain.getCommandStack().execute(new ModelCommand(command));
			return true;
		}).orElse(false);
	}
}
