// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile.tools;

import org.eclipse.draw2d.Cursors;
import org.eclipse.draw2d.geometry.Dimension;
import org.eclipse.gef.GraphicalViewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.KeyEvent;

import wainscribe.ui.profile.Messages;
import wainscribe.ui.profile.backdrop.Backdrop;
import wainscribe.ui.profile.desk.ProfileDesk;

/** Moves the backdrop by a drag, or pixel by pixel with the arrow keys. */
public final class MoveBackdropTool extends DeskTool {

	private static final int MANY = 10;

	/** Creates the tool of a desk. */
	public MoveBackdropTool(GraphicalViewer viewer, ProfileDesk desk) {
		super(viewer, desk);
		setDefaultCursor(Cursors.SIZEALL);
	}

	@Override
	protected boolean handleButtonUp(int button) {
		if (button == 1) {
			Dimension moved = getDragMoveDelta();
			moveBy(moved.width, moved.height);
		}
		return true;
	}

	@Override
	protected boolean handleKeyDown(KeyEvent event) {
		int step = (event.stateMask & (SWT.MOD1 | SWT.SHIFT)) != 0 ? MANY : 1;
		switch (event.keyCode) {
			case SWT.ARROW_LEFT -> moveBy(-step, 0);
			case SWT.ARROW_RIGHT -> moveBy(step, 0);
			case SWT.ARROW_UP -> moveBy(0, -step);
			case SWT.ARROW_DOWN -> moveBy(0, step);
			case SWT.CR -> getDomain().loadDefaultTool();
			default -> {
				return super.handleKeyDown(event);
			}
		}
		return true;
	}

	private void moveBy(int columns, int rows) {
		Backdrop now = desk().session().backdrop().orElse(null);
		if (now != null && (columns != 0 || rows != 0)) {
			double scale = desk().plane().scale();
			desk().session().execute(desk().session().laying(Messages.MoveBackdropTool_Label,
					now.movedBy(-rows / scale, columns / scale)));
		}
	}
}
