// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile.directedit;

import java.util.function.Consumer;

import org.eclipse.draw2d.geometry.Point;
import org.eclipse.gef.GraphicalViewer;

import wainscribe.model.length.Length;
import wainscribe.ui.profile.Messages;
import wainscribe.ui.profile.desk.ProfileDesk;

/** Asks what is really between two points of a picture. */
public final class DistanceField {

	private DistanceField() {
	}

	/**
	 * Opens the field.
	 *
	 * @param viewer the viewer it lies over
	 * @param desk   unit and colours
	 * @param where  a place on the viewer's control
	 * @param taker  takes a distance above zero
	 */
	public static void open(GraphicalViewer viewer, ProfileDesk desk, Point where, Consumer<Length> taker) {
		DeskField field = new DeskField(viewer, desk, where);
		field.add(Messages.DistanceField_Real, null);
		field.open(desk, typed -> {
			if (typed.getFirst().signum() <= 0) {
				throw new IllegalArgumentException(Messages.DistanceField_AboveZero);
			}
			taker.accept(typed.getFirst());
		});
	}
}
