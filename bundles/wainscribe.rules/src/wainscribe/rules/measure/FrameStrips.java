// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.measure;

import java.util.List;

import wainscribe.layout.FrameOutline;
import wainscribe.layout.MouldingSection;
import wainscribe.layout.StripOutline;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;

/** The four mouldings of a frame: its outline less its field; and strips as they are. */
final class FrameStrips {

	private FrameStrips() {
	}

	static List<Strip> of(Wall wall, FrameOutline frame, MouldingSection moulding) {
		Length face = moulding.face().min(frame.width()).min(frame.height());
		Length left = frame.x();
		Length right = frame.right();
		Length lowerLeft = frame.y();
		Length lowerRight = lowerLeft.plus(frame.rise());
		Length upperLeft = frame.top();
		Length upperRight = upperLeft.plus(frame.riseTop());
		Length lowerFace = plumb(face, frame.rise(), frame.width());
		Length upperFace = plumb(face, frame.riseTop(), frame.width());
		Length lowerStep = climb(frame.rise(), face, frame.width());
		Length upperStep = climb(frame.riseTop(), face, frame.width());
		return List.of(
				strip(wall, frame, moulding, Quadrilateral.upright(left, right, lowerLeft, lowerRight,
						lowerLeft.plus(lowerFace), lowerRight.plus(lowerFace))),
				strip(wall, frame, moulding, Quadrilateral.upright(left, right, upperLeft.minus(upperFace),
						upperRight.minus(upperFace), upperLeft, upperRight)),
				strip(wall, frame, moulding, Quadrilateral.upright(left, left.plus(face), lowerLeft,
						lowerLeft.plus(lowerStep), upperLeft, upperLeft.plus(upperStep))),
				strip(wall, frame, moulding, Quadrilateral.upright(right.minus(face), right, lowerRight.minus(lowerStep),
						lowerRight, upperRight.minus(upperStep), upperRight)));
	}

	/** Returns a strip of its own. */
	static Strip of(Wall wall, StripOutline strip, MouldingSection moulding) {
		return new Strip(wall, strip, Quadrilateral.upright(strip.x(), strip.right(), strip.y(), strip.y().plus(strip.rise()),
				strip.top(), strip.top().plus(strip.riseTop())), moulding.thickness());
	}

	private static Strip strip(Wall wall, FrameOutline frame, MouldingSection moulding, Quadrilateral shape) {
		return new Strip(wall, frame, shape, moulding.thickness());
	}

	/** Returns the plumb height of a face that is measured square to a slope; exact where it is level. */
	private static Length plumb(Length face, Length rise, Length width) {
		if (rise.signum() == 0) {
			return face;
		}
		double along = Math.hypot(rise.units(), width.units());
		return new Length(Math.round(face.units() * along / width.units()));
	}

	/** Returns how far a slope climbs over a part of its width, to the nearest unit. */
	private static Length climb(Length rise, Length part, Length width) {
		if (rise.signum() == 0) {
			return Length.ZERO;
		}
		return new Length(Math.round((double) rise.units() * part.units() / width.units()));
	}
}
