// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.speed;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;

import org.eclipse.draw2d.FigureCanvas;
import org.eclipse.draw2d.UpdateListener;
import org.eclipse.draw2d.UpdateManager;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.gef.GraphicalViewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Listener;

/**
 * A drag whose steps are timed one by one: from the movement of the pointer until everything that follows from it is done and
 * painted on the screen, whatever has to be waited for.
 */
final class Strokes implements UpdateListener {

	private static final double NANOS_PER_MILLI = 1e6;
	private static final int AWAY = 12;
	private static final int STEP = 7;
	private static final int SPAN = 120;
	private static final long PATIENCE = 1_000_000_000L;

	private final ThreadMXBean threads = ManagementFactory.getThreadMXBean();
	private final Control control;
	private final UpdateManager manager;
	private final Listener painted = event -> asked = false;
	private final List<Double> frames = new ArrayList<>();
	private final List<Double> work = new ArrayList<>();
	private boolean asked;

	Strokes(GraphicalViewer viewer) {
		control = viewer.getControl();
		manager = ((FigureCanvas) control).getViewport().getUpdateManager();
	}

	/** Drags what is at a point to and fro, and leaves it where it was. */
	void drag(Point from, int steps) {
		manager.addUpdateListener(this);
		control.addListener(SWT.Paint, painted);
		send(SWT.MouseMove, from, 0, 0);
		send(SWT.MouseDown, from, 1, 0);
		finish();
		for (int i = 0; i < steps; i++) {
			step(new Point(from.x + AWAY + i * STEP % SPAN, from.y));
		}
		Event escape = new Event();
		escape.keyCode = SWT.ESC;
		escape.character = SWT.ESC;
		control.notifyListeners(SWT.KeyDown, escape);
		send(SWT.MouseUp, from, 1, SWT.BUTTON1);
		finish();
		control.removeListener(SWT.Paint, painted);
		manager.removeUpdateListener(this);
	}

	/** Returns the median time of a step in milliseconds, with all waiting for the screen. */
	double frame() {
		return median(frames);
	}

	/** Returns the median time that a step takes the processor in the thread of the user interface, in milliseconds. */
	double work() {
		return median(work);
	}

	private void step(Point at) {
		long start = System.nanoTime();
		long busy = threads.getCurrentThreadCpuTime();
		send(SWT.MouseMove, at, 0, SWT.BUTTON1);
		finish();
		frames.add((System.nanoTime() - start) / NANOS_PER_MILLI);
		work.add((threads.getCurrentThreadCpuTime() - busy) / NANOS_PER_MILLI);
	}

	/** Does all that is waiting, until the last part that figures asked to be painted is on the screen. */
	private void finish() {
		Display display = control.getDisplay();
		long end = System.nanoTime() + PATIENCE;
		do {
			while (display.readAndDispatch()) {
				// all of it
			}
			if (asked && !display.isDisposed()) {
				display.sleep();
			}
		} while (asked && System.nanoTime() < end);
	}

	private void send(int type, Point at, int button, int state) {
		Event event = new Event();
		event.x = at.x;
		event.y = at.y;
		event.button = button;
		event.stateMask = state;
		event.count = 1;
		control.notifyListeners(type, event);
	}

	@Override
	public void notifyPainting(Rectangle damage, @SuppressWarnings("rawtypes") Map regions) {
		asked = true;
	}

	@Override
	public void notifyValidating() {
		// of no interest
	}

	private static double median(List<Double> times) {
		List<Double> sorted = new ArrayList<>(times);
		Collections.sort(sorted);
		return sorted.get(sorted.size() / 2);
	}
}
