// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile.desk;

import java.util.Objects;

import org.eclipse.core.runtime.ListenerList;
import org.eclipse.draw2d.FigureCanvas;
import org.eclipse.draw2d.Viewport;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.gef.GraphicalViewer;

import wainscribe.profile.section.SectionBox;
import wainscribe.profile.section.Spot;

/** The scale of the desk, named as on paper: at 5:1 five millimetres of the screen stand for one of the moulding. */
public final class DeskZoom {

	private static final double MILLIMETRES_PER_INCH = 25.4;
	private static final double STEP = 1.25;
	private static final double LEAST = 0.5;
	private static final double MOST = 200;
	private static final double EDGE = 56;
	private static final double EDGE_SHARE = 0.14;
	private static final double EMPTY = 50;

	private final GraphicalViewer viewer;
	private final ProfileDesk desk;
	private final ListenerList<Runnable> listeners = new ListenerList<>();
	private boolean following = true;

	/** Creates the zoom of a viewer. */
	public DeskZoom(GraphicalViewer viewer, ProfileDesk desk) {
		this.viewer = Objects.requireNonNull(viewer);
		this.desk = Objects.requireNonNull(desk);
	}

	/** Returns the scale as on paper, such as {@code 5:1}. */
	public String text() {
		double ratio = desk.plane().scale() / trueScale();
		return ratio >= 1 ? rounded(ratio) + ":1" : "1:" + rounded(1 / ratio); //$NON-NLS-1$ //$NON-NLS-2$
	}

	private static String rounded(double ratio) {
		return ratio < 10 ? String.valueOf(Math.round(ratio * 10) / 10.0).replaceAll("\\.0$", "") //$NON-NLS-1$ //$NON-NLS-2$
				: String.valueOf(Math.round(ratio));
	}

	/** Starts to tell when the scale has changed. */
	public void addListener(Runnable listener) {
		listeners.add(listener);
	}

	/** Draws one step larger. */
	public void zoomIn() {
		zoomTo(desk.plane().scale() * STEP, centre());
	}

	/** Draws one step smaller. */
	public void zoomOut() {
		zoomTo(desk.plane().scale() / STEP, centre());
	}

	/** Draws the moulding in its true size, as far as the screen says how large it is. */
	public void trueSize() {
		zoomTo(trueScale(), centre());
		show(desk.plane().pixels(box()).getCenter());
	}

	/** Draws so many times as large as the moulding is. */
	public void zoomToRatio(int times) {
		zoomTo(trueScale() * times, centre());
	}

	/** Draws steps larger or smaller, round the pointer. */
	public void zoomAt(Point pointer, int steps) {
		zoomTo(desk.plane().scale() * Math.pow(STEP, steps), pointer);
	}

	/** Shows the whole section as large as it goes. */
	public void fit() {
		Rectangle view = viewport().getClientArea();
		SectionBox box = box();
		double high = Math.max(1, box.width().approximateMillimetres());
		double wide = Math.max(1, box.projection().approximateMillimetres());
		if (!view.isEmpty()) {
			double edge = Math.min(EDGE, Math.min(view.width, view.height) * EDGE_SHARE);
			double scale = Math.min((view.width - 2 * edge) / wide, (view.height - 2 * edge) / high);
			desk.setScale(Math.clamp(scale, LEAST, MOST));
			viewer.flush();
			show(desk.plane().pixels(box).getCenter());
			tell();
		}
	}

	/** Follows the size of the desk as long as nobody has chosen a scale. */
	public void follow() {
		if (following) {
			fit();
			following = true;
		}
	}

	private SectionBox box() {
		SectionBox box = desk.session().draft().section().box();
		return box.width().signum() == 0 || box.projection().signum() == 0
				? new SectionBox(new Spot(0, 0).nearest(), new Spot(EMPTY, EMPTY).nearest()) : box;
	}

	private double trueScale() {
		return viewer.getControl().getDisplay().getDPI().x / MILLIMETRES_PER_INCH;
	}

	private void zoomTo(double scale, Point anchor) {
		Spot fixed = desk.plane().spot(anchor.getCopy().translate(viewport().getViewLocation()));
		desk.setScale(Math.clamp(scale, LEAST, MOST));
		viewer.flush();
		Point now = desk.plane().pixel(fixed);
		canvas().scrollTo(now.x - anchor.x, now.y - anchor.y);
		tell();
	}

	private void show(Point middle) {
		Rectangle view = viewport().getClientArea();
		canvas().scrollTo(middle.x - view.width / 2, middle.y - view.height / 2);
	}

	private Point centre() {
		Rectangle view = viewport().getClientArea();
		return new Point(view.width / 2, view.height / 2);
	}

	private FigureCanvas canvas() {
		return (FigureCanvas) viewer.getControl();
	}

	private Viewport viewport() {
		return canvas().getViewport();
	}

	private void tell() {
		following = false;
		listeners.forEach(Runnable::run);
	}
}
