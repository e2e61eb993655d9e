// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.policies;

import org.eclipse.draw2d.geometry.Dimension;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.gef.Request;
import org.eclipse.gef.requests.ChangeBoundsRequest;

import wainscribe.ui.elevation.snapping.EdgeShift;
import wainscribe.ui.elevation.snapping.Pull;
import wainscribe.ui.elevation.table.Projection;

/** Reads what a drag asks for. */
public final class DragRequests {

	private static final String FREE = "wainscribe.free"; //$NON-NLS-1$

	private DragRequests() {
	}

	/** Notes in a request whether the designer asks for movement free of lines. */
	@SuppressWarnings("unchecked")
	public static void setFree(Request request, boolean free) {
		request.getExtendedData().put(FREE, free);
	}

	/** Returns what is to draw the edges. */
	static Pull pull(Request request) {
		return Boolean.TRUE.equals(request.getExtendedData().get(FREE)) ? Pull.MARKS : Pull.LINES;
	}

	/** Returns how far the pointer has shifted the edges. */
	static EdgeShift shift(ChangeBoundsRequest request, Projection projection) {
		Point move = request.getMoveDelta() == null ? new Point() : request.getMoveDelta();
		Dimension size = request.getSizeDelta() == null ? new Dimension() : request.getSizeDelta();
		return new EdgeShift(projection.length(move.x), projection.length(-move.y - size.height),
				projection.length(move.x + size.width), projection.length(-move.y));
	}
}
