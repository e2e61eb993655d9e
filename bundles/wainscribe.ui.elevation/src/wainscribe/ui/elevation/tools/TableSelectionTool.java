// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.tools;

import java.util.Objects;

import org.eclipse.gef.tools.PanningSelectionTool;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.TraverseEvent;

/** The arrow: selects and drags, moves the table while the space bar is held, and goes from thing to thing by Tab. */
public final class TableSelectionTool extends PanningSelectionTool {

	private final WallWalk walk;

	/**
	 * Creates the tool.
	 *
	 * @param walk goes from thing to thing
	 */
	public TableSelectionTool(WallWalk walk) {
		this.walk = Objects.requireNonNull(walk);
	}

	/** Ctrl+Tab still leaves the table. */
	@Override
	protected void handleKeyTraversed(TraverseEvent event) {
		boolean leaves = (event.stateMask & SWT.MOD1) != 0;
		if (!leaves && (event.detail == SWT.TRAVERSE_TAB_NEXT || event.detail == SWT.TRAVERSE_TAB_PREVIOUS)) {
			event.doit = false;
			walk.goAlong(event.detail == SWT.TRAVERSE_TAB_NEXT ? 1 : -1);
		}
	}
}
