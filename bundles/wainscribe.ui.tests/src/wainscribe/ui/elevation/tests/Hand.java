// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.tests;

import org.eclipse.draw2d.geometry.Point;
import org.eclipse.gef.GraphicalEditPart;
import org.eclipse.gef.GraphicalViewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;

/** Mouse and keyboard of a test: sends a viewer's control the events that the system would send. */
final class Hand {

	private static final int STEPS = 6;

	private final GraphicalViewer viewer;
	private final Control control;

	Hand(GraphicalViewer viewer) {
		this.viewer = viewer;
		this.control = viewer.getControl();
	}

	/** Returns the middle of a part on the control. */
	Point middle(GraphicalEditPart part) {
		viewer.reveal(part);
		viewer.flush();
		Point middle = part.getFigure().getBounds().getCenter();
		part.getFigure().translateToAbsolute(middle);
		return middle;
	}

	/** Moves the pointer. */
	void moveTo(Point at) {
		send(SWT.MouseMove, at, 0, 0);
		settle();
	}

	/** Clicks. */
	void click(Point at) {
		send(SWT.MouseMove, at, 0, 0);
		send(SWT.MouseDown, at, 1, 0);
		send(SWT.MouseUp, at, 1, SWT.BUTTON1);
		settle();
	}

	/** Clicks twice in quick succession. */
	void doubleClick(Point at) {
		click(at);
		Event event = event(at, 1, 0);
		event.count = 2;
		control.notifyListeners(SWT.MouseDown, event);
		Event again = event(at, 1, 0);
		again.count = 2;
		control.notifyListeners(SWT.MouseDoubleClick, again);
		send(SWT.MouseUp, at, 1, SWT.BUTTON1);
		settle();
	}

	/** Drags without letting go. */
	void dragTo(Point from, int dx, int dy) {
		send(SWT.MouseMove, from, 0, 0);
		send(SWT.MouseDown, from, 1, 0);
		for (int i = 1; i <= STEPS; i++) {
			send(SWT.MouseMove, new Point(from.x + dx * i / STEPS, from.y + dy * i / STEPS), 0, SWT.BUTTON1);
		}
		settle();
	}

	/** Drags and lets go. */
	void drag(Point from, int dx, int dy) {
		dragTo(from, dx, dy);
		drop(new Point(from.x + dx, from.y + dy));
	}

	/** Lets go. */
	void drop(Point at) {
		send(SWT.MouseUp, at, 1, SWT.BUTTON1);
		settle();
	}

	/** Presses a key. */
	void key(int code, char character, int modifiers) {
		Event event = new Event();
		event.keyCode = code;
		event.character = character;
		event.stateMask = modifiers;
		control.notifyListeners(SWT.KeyDown, event);
		settle();
	}

	/** Goes on by Tab. */
	void tab() {
		Event event = new Event();
		event.detail = SWT.TRAVERSE_TAB_NEXT;
		event.doit = true;
		control.notifyListeners(SWT.Traverse, event);
		settle();
	}

	/** Lets everything happen that is waiting to happen. */
	void settle() {
		Display display = control.getDisplay();
		while (display.readAndDispatch()) {
			// all of it
		}
		viewer.flush();
	}

	private void send(int type, Point at, int button, int state) {
		control.notifyListeners(type, event(at, button, state));
	}

	private static Event event(Point at, int button, int state) {
		Event event = new Event();
		event.x = at.x;
		event.y = at.y;
		event.button = button;
		event.stateMask = state;
		event.count = 1;
		return event;
	}
}
