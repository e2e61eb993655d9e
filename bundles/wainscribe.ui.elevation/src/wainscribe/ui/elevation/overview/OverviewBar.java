// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.overview;

import java.util.Objects;
import java.util.stream.Collectors;

import org.eclipse.draw2d.FigureCanvas;
import org.eclipse.draw2d.Viewport;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleControlAdapter;
import org.eclipse.swt.accessibility.AccessibleControlEvent;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;

import wainscribe.model.Wall;
import wainscribe.ui.elevation.Messages;
import wainscribe.ui.elevation.table.DrawingTable;
import wainscribe.ui.elevation.table.Overlay;
import wainscribe.ui.elevation.table.TableListener;
import wainscribe.ui.elevation.words.ElementText;

/**
 * All walls of the room small side by side, under the drawing, with a rectangle round what is in view there. The rectangle is
 * dragged, or moved by the arrow keys, and the drawing follows; Escape goes back to the drawing.
 */
public final class OverviewBar extends Canvas implements TableListener {

	private static final int HEIGHT = 92;
	/** Arrow keys move by this share of what is in view. */
	private static final int STEPS = 8;

	private final DrawingTable table;
	private final FigureCanvas canvas;
	private Point hold;

	/**
	 * Creates a bar in a column of a grid. It is hidden until {@link Overlay#OVERVIEW} is shown.
	 *
	 * @param parent has a grid layout
	 * @param table  the drawing table
	 * @param canvas shows the table and is scrolled
	 */
	public OverviewBar(Composite parent, DrawingTable table, FigureCanvas canvas) {
		super(parent, SWT.DOUBLE_BUFFERED);
		this.table = Objects.requireNonNull(table);
		this.canvas = Objects.requireNonNull(canvas);
		GridData data = new GridData(SWT.FILL, SWT.FILL, true, false);
		data.heightHint = HEIGHT;
		setLayoutData(data);
		addListener(SWT.Paint, event -> new OverviewPainter(table, map()).paint(event.gc, inView(), isFocusControl()));
		addListener(SWT.MouseDown, this::take);
		addListener(SWT.MouseMove, this::drag);
		addListener(SWT.MouseUp, event -> hold = null);
		addListener(SWT.KeyDown, this::key);
		addListener(SWT.Traverse, event -> event.doit = event.detail == SWT.TRAVERSE_TAB_NEXT
				|| event.detail == SWT.TRAVERSE_TAB_PREVIOUS);
		addListener(SWT.FocusIn, event -> redraw());
		addListener(SWT.FocusOut, event -> redraw());
		canvas.getViewport().addPropertyChangeListener(Viewport.PROPERTY_VIEW_LOCATION, event -> redrawIfAlive());
		canvas.addListener(SWT.Resize, event -> redrawIfAlive());
		addListener(SWT.Dispose, event -> table.removeListener(this));
		table.addListener(this);
		tellScreenReaders();
		follow();
	}

	@Override
	public void drawingsChanged() {
		if (!isDisposed()) {
			follow();
			redraw();
		}
	}

	private void follow() {
		boolean shown = table.overlays().shows(Overlay.OVERVIEW);
		GridData data = (GridData) getLayoutData();
		if (data.exclude == shown) {
			boolean hadFocus = isFocusControl();
			data.exclude = !shown;
			setVisible(shown);
			getParent().layout();
			if (hadFocus) {
				canvas.setFocus();
			}
		}
	}

	private void redrawIfAlive() {
		if (!isDisposed()) {
			redraw();
		}
	}

	private OverviewMap map() {
		return OverviewMap.of(table.area(), new Rectangle(getClientArea()));
	}

	/** Returns which pixels of the drawing are in view. */
	private Rectangle inView() {
		Viewport view = canvas.getViewport();
		return new Rectangle(view.getViewLocation(), view.getClientArea().getSize());
	}

	private void take(Event event) {
		setFocus();
		Rectangle view = map().small(inView());
		boolean inside = view.contains(event.x, event.y);
		hold = inside ? new Point(event.x - view.x, event.y - view.y) : new Point(view.width / 2, view.height / 2);
		drag(event);
	}

	private void drag(Event event) {
		if (hold != null) {
			org.eclipse.draw2d.geometry.Point corner = map().large(event.x - hold.x, event.y - hold.y);
			canvas.scrollTo(corner.x, corner.y);
		}
	}

	private void key(Event event) {
		Rectangle view = inView();
		switch (event.keyCode) {
			case SWT.ARROW_LEFT -> canvas.scrollToX(view.x - view.width / STEPS);
			case SWT.ARROW_RIGHT -> canvas.scrollToX(view.x + view.width / STEPS);
			case SWT.ARROW_UP -> canvas.scrollToY(view.y - view.height / STEPS);
			case SWT.ARROW_DOWN -> canvas.scrollToY(view.y + view.height / STEPS);
			case SWT.PAGE_UP -> canvas.scrollToX(view.x - view.width);
			case SWT.PAGE_DOWN -> canvas.scrollToX(view.x + view.width);
			case SWT.HOME -> canvas.scrollToX(0);
			case SWT.END -> canvas.scrollToX(table.area().width);
			case SWT.ESC -> canvas.setFocus();
			default -> {
				// other keys mean nothing here
			}
		}
	}

	private void tellScreenReaders() {
		getAccessible().addAccessibleListener(new AccessibleAdapter() {

			@Override
			public void getName(AccessibleEvent event) {
				event.result = Messages.OverviewBar_Name;
			}
		});
		getAccessible().addAccessibleControlListener(new AccessibleControlAdapter() {

			@Override
			public void getValue(AccessibleControlEvent event) {
				event.result = NLS.bind(Messages.OverviewBar_Value, table.walls().stream().filter(OverviewBar.this::isInView)
						.map(ElementText::name).collect(Collectors.joining(", "))); //$NON-NLS-1$
			}
		});
	}

	private boolean isInView(Wall wall) {
		return table.placeOf(wall).pixels(table.drawingOf(wall).wall()).intersects(inView());
	}
}
