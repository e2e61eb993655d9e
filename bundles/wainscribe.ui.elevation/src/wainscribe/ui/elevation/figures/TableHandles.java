// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.figures;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.draw2d.Cursors;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.IFigure;
import org.eclipse.draw2d.LineBorder;
import org.eclipse.draw2d.PositionConstants;
import org.eclipse.draw2d.geometry.Dimension;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.gef.DragTracker;
import org.eclipse.gef.GraphicalEditPart;
import org.eclipse.gef.handles.MoveHandle;
import org.eclipse.gef.handles.ResizeHandle;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;

import wainscribe.ui.drafting.appearance.Appearance;
import wainscribe.ui.drafting.appearance.TableColours;
import wainscribe.ui.elevation.tools.EdgeTracker;

/** The outline and the grips of what is selected. */
public final class TableHandles {

	/** A side shorter than this has no room for grips that leave anything to take hold of in between. */
	private static final int ROOM_FOR_GRIPS = 26;
	private static final int[] GRIPS = { PositionConstants.NORTH_WEST, PositionConstants.NORTH, PositionConstants.NORTH_EAST,
			PositionConstants.EAST, PositionConstants.SOUTH_EAST, PositionConstants.SOUTH, PositionConstants.SOUTH_WEST,
			PositionConstants.WEST };

	private TableHandles() {
	}

	/**
	 * Makes the handles of a part.
	 *
	 * @param part       the selected part
	 * @param colours    colours of the table
	 * @param directions bits of {@link PositionConstants}: sides that can be dragged
	 */
	public static List<IFigure> of(GraphicalEditPart part, TableColours colours, int directions) {
		Color select = Appearance.colour(colours.select());
		List<IFigure> handles = new ArrayList<>();
		handles.add(new OutlineHandle(part, select));
		int sides = gripsFor(part.getFigure().getBounds(), directions);
		for (int grip : GRIPS) {
			if ((grip & sides) == grip) {
				handles.add(new Grip(part, grip, select, Appearance.colour(colours.drawing().wall())));
			}
		}
		return handles;
	}

	/**
	 * Returns the sides of a thing that have room for grips.
	 *
	 * @param bounds     pixels of the thing
	 * @param directions sides that can be dragged
	 */
	public static int gripsFor(Rectangle bounds, int directions) {
		return bounds.width >= ROOM_FOR_GRIPS && bounds.height >= ROOM_FOR_GRIPS ? directions : PositionConstants.NONE;
	}

	/** The outline; taking hold of it moves. */
	private static final class OutlineHandle extends MoveHandle {

		private static final int WIDTH = 2;

		OutlineHandle(GraphicalEditPart owner, Color colour) {
			super(owner);
			setBorder(new LineBorder(colour, WIDTH));
		}

		@Override
		protected DragTracker createDragTracker() {
			return getOwner().getDragTracker(null);
		}

		@Override
		protected void initialize() {
			setOpaque(false);
			setCursor(Cursors.SIZEALL);
			setBorder(new LineBorder(WIDTH));
		}
	}

	/** One grip. */
	private static final class Grip extends ResizeHandle {

		private static final int SIZE = 9;

		private final int direction;
		private final Color line;
		private final Color fill;

		Grip(GraphicalEditPart owner, int direction, Color line, Color fill) {
			super(owner, direction);
			this.direction = direction;
			this.line = line;
			this.fill = fill;
			setPreferredSize(new Dimension(SIZE, SIZE));
		}

		@Override
		protected DragTracker createDragTracker() {
			return new EdgeTracker(getOwner(), direction);
		}

		@Override
		public void paintFigure(Graphics graphics) {
			graphics.setAntialias(SWT.ON);
			Rectangle area = getBounds().getCopy().shrink(1, 1);
			graphics.setBackgroundColor(isPrimary() ? line : fill);
			graphics.fillRectangle(area);
			graphics.setForegroundColor(isPrimary() ? fill : line);
			graphics.drawRectangle(area.x, area.y, area.width - 1, area.height - 1);
		}
	}
}
