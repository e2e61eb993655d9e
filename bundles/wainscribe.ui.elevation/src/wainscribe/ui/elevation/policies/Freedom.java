// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.policies;

import java.util.Objects;

import org.eclipse.draw2d.PositionConstants;

import wainscribe.model.ExistingTrim;
import wainscribe.model.Placed;
import wainscribe.model.length.Length;
import wainscribe.model.outline.Outline;
import wainscribe.ui.elevation.snapping.EdgeShift;

/**
 * How a surveyed thing can be shifted. What was not measured is as long as the wall lets it be: a stud without a height runs
 * from floor to ceiling and moves only along the wall, a moulding without ends runs from corner to corner and moves only up and
 * down.
 *
 * @param element the thing
 */
record Freedom(Placed element) {

	/** Refuses null. */
	Freedom {
		Objects.requireNonNull(element);
	}

	static Freedom of(Placed element) {
		return new Freedom(element);
	}

	/** Returns what is left of a shift. */
	EdgeShift kept(EdgeShift shift) {
		EdgeShift along = element.getX() == null || isEndless() ? shift.plumbOnly() : shift;
		return element.getHeight() == null ? along.levelOnly() : along;
	}

	/** Returns the edges that can be taken hold of, bits of {@link PositionConstants}. */
	int edges() {
		int sides = element.getX() == null || element.getWidth() == null ? PositionConstants.NONE : PositionConstants.EAST_WEST;
		return element.getHeight() == null ? sides : sides | PositionConstants.NORTH_SOUTH;
	}

	/** Returns what was measured; zero for what was not. */
	Outline measured() {
		return Outline.ofSize(known(element.getX()), known(element.getY()), known(element.getWidth()), known(element.getHeight()));
	}

	/** A moulding that begins at the corner and has no length of its own goes on to the other corner. */
	private boolean isEndless() {
		return element instanceof ExistingTrim && element.getWidth() == null;
	}

	private static Length known(Length length) {
		return length == null ? Length.ZERO : length;
	}
}
