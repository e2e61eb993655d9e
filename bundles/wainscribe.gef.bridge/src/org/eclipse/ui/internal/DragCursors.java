// SPDX-License-Identifier: EPL-2.0
package org.eclipse.ui.internal;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Cursor;
import org.eclipse.swt.widgets.Display;

/**
 * Stands in for the class of this name that today's workbench no longer has, but GEF 3.2 asks for the pointers shown
 * while its palette is dragged from one side of an editor to the other.
 */
public final class DragCursors {

	/** Dropping is not possible here. */
	public static final int INVALID = 0;
	/** Dropping puts the palette on the left. */
	public static final int LEFT = 1;
	/** Dropping puts the palette on the right. */
	public static final int RIGHT = 2;

	private DragCursors() {
	}

	/**
	 * The pointer for a place.
	 *
	 * @param code {@link #INVALID}, {@link #LEFT} or {@link #RIGHT}; anything else counts as invalid
	 * @return a cursor owned by the display, never to be disposed
	 */
	public static Cursor getCursor(int code) {
		return Display.getCurrent().getSystemCursor(switch (code) {
			case LEFT -> SWT.CURSOR_SIZEW;
			case RIGHT -> SWT.CURSOR_SIZEE;
			default -> SWT.CURSOR_NO;
		});
	}
}
