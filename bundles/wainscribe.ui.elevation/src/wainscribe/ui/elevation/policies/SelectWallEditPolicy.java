// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.policies;

import org.eclipse.draw2d.Figure;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.IFigure;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.gef.LayerConstants;
import org.eclipse.gef.editpolicies.SelectionEditPolicy;

import wainscribe.drawing.Bounds;
import wainscribe.ui.drafting.appearance.Appearance;
import wainscribe.ui.elevation.editparts.WallEditPart;

/** Marks a selected wall by a line under its floor, quiet enough to draw over. */
public final class SelectWallEditPolicy extends SelectionEditPolicy {

	private static final int THICKNESS = 3;

	private IFigure mark;

	@Override
	protected void showSelection() {
		hideSelection();
		mark = new Mark((WallEditPart) getHost());
		getLayer(LayerConstants.FEEDBACK_LAYER).add(mark);
	}

	@Override
	protected void hideSelection() {
		if (mark != null) {
			getLayer(LayerConstants.FEEDBACK_LAYER).remove(mark);
			mark = null;
		}
	}

	/** The line under the wall; follows scale and appearance because it asks for them when it is painted. */
	private static final class Mark extends Figure {

		private final WallEditPart wall;

		Mark(WallEditPart wall) {
			this.wall = wall;
			setBounds(line());
		}

		@Override
		public Rectangle getBounds() {
			return wall == null ? super.getBounds() : line();
		}

		@Override
		protected void paintFigure(Graphics graphics) {
			graphics.setBackgroundColor(Appearance.colour(wall.table().colours().select()));
			graphics.fillRectangle(line());
		}

		@Override
		public boolean containsPoint(int x, int y) {
			return false;
		}

		private Rectangle line() {
			Bounds bounds = wall.table().drawingOf(wall.getModel()).wall();
			Rectangle pixels = wall.table().placeOf(wall.getModel()).pixels(bounds);
			return new Rectangle(pixels.x, pixels.bottom() + 1, pixels.width, THICKNESS);
		}
	}
}
