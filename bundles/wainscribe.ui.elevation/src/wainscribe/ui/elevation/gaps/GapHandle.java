// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.gaps;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.draw2d.Cursors;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.IFigure;
import org.eclipse.draw2d.geometry.Dimension;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.gef.DragTracker;
import org.eclipse.gef.handles.AbstractHandle;

import wainscribe.ui.drafting.appearance.Appearance;
import wainscribe.ui.elevation.editparts.FrameEditPart;
import wainscribe.ui.elevation.table.DrawingTable;

/** A bar in a gap beside a selected frame, to take hold of the gap by. */
public final class GapHandle extends AbstractHandle {

	private static final int LEAST = 9;
	private static final int LENGTH = 30;
	/** In narrower gaps the bar would lie under the grips of the frame. */
	private static final int ROOM = 8;

	private final FrameEditPart frame;
	private final int number;
	private final boolean upright;

	private GapHandle(FrameEditPart frame, int number, boolean upright) {
		this.frame = frame;
		this.number = number;
		this.upright = upright;
		setOwner(frame);
		setLocator(this::place);
		setCursor(upright ? Cursors.SIZENS : Cursors.SIZEWE);
	}

	/** Makes the handles of the gaps round a frame. */
	public static List<IFigure> of(FrameEditPart frame) {
		List<IFigure> handles = new ArrayList<>();
		List<GapSpot> spots = spots(frame);
		for (int i = 0; i < spots.size(); i++) {
			handles.add(new GapHandle(frame, i, spots.get(i).upright()));
		}
		return handles;
	}

	private static List<GapSpot> spots(FrameEditPart part) {
		DrawingTable table = part.table();
		return part.frame().map(frame -> GapSpots.round(table.design(), part.wall(), frame)).orElse(List.of());
	}

	/** A gap that is no more shows no handle. */
	private void place(IFigure handle) {
		List<GapSpot> spots = spots(frame);
		boolean there = number < spots.size() && spots.get(number).upright() == upright;
		if (!there) {
			handle.setBounds(new Rectangle());
			return;
		}
		Rectangle area = frame.table().placeOf(frame.wall()).pixels(spots.get(number).area());
		boolean room = (upright ? area.height : area.width) >= ROOM;
		Dimension size = upright ? new Dimension(Math.min(LENGTH, area.width), LEAST)
				: new Dimension(LEAST, Math.min(LENGTH, area.height));
		handle.setBounds(room ? new Rectangle(area.getCenter().x - size.width / 2, area.getCenter().y - size.height / 2,
				size.width, size.height) : new Rectangle());
	}

	@Override
	protected DragTracker createDragTracker() {
		return new GapTracker(frame, frame.table(), spots(frame).get(number));
	}

	@Override
	protected void paintFigure(Graphics graphics) {
		GapMark.paintBar(graphics, getBounds(), upright, Appearance.colour(frame.table().colours().select()));
	}
}
