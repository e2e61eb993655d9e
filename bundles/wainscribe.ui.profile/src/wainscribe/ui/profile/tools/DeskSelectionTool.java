// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile.tools;

import java.util.Objects;

import org.eclipse.gef.tools.PanningSelectionTool;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.TraverseEvent;

/** The arrow: selects and drags, moves the desk while the space bar is held, and goes from point to point by Tab. */
public final class DeskSelectionTool extends PanningSelectionTool {

	private final PointWalk walk;

	/**
	 * Creates the tool.
	 *
	 * @param walk goes from point to point
	 */
	public DeskSelectionTool(PointWalk walk) {
		this.walk = Objects.requireNonNull(walk);
	}

	/** Ctrl+Tab still leaves the desk. */
	@Override
	protected void handleKeyTraversed(TraverseEvent event) {
		boolean leaves = (event.stateMask & SWT.MOD1) != 0;
		if (!leaves && (event.detail == SWT.TRAVERSE_TAB_NEXT || event.detail == SWT.TRAVERSE_TAB_PREVIOUS)) {
			event.doit = false;
			walk.alongPoints(event.detail == SWT.TRAVERSE_TAB_NEXT ? 1 : -1);
		}
	}
}
