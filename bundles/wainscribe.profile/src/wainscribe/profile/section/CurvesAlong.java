// SPDX-License-Identifier: EPL-2.0
package wainscribe.profile.section;

import java.util.ArrayList;
import java.util.List;

/** Describes any segment as Bezier curves. */
final class CurvesAlong {

	private static final double QUARTER = Math.PI / 2;

	private CurvesAlong() {
	}

	/** Returns curves that follow the segment: exactly for a line, to 0.03 % of the radius for an arc. */
	static List<CurveSegment> of(Segment segment) {
		return switch (segment) {
			case CurveSegment curve -> List.of(curve);
			case StraightSegment line -> List.of(new CurveSegment(line.start(), line.at(1 / 3.0).nearest(), line.at(2 / 3.0).nearest(),
					line.end()));
			case ArcSegment arc -> ofArc(arc);
		};
	}

	/** Handles of 4/3 tan(turn / 4) radii make the curve meet the arc at both ends and in the middle. */
	private static List<CurveSegment> ofArc(ArcSegment arc) {
		int count = (int) Math.max(1, Math.ceil(Math.abs(arc.sweep()) / QUARTER - 1e-6));
		double handle = 4 / 3.0 * Math.tan(arc.sweep() / count / 4);
		Spot centre = arc.centre();
		List<CurveSegment> curves = new ArrayList<>();
		SectionPoint from = arc.start();
		for (int i = 1; i <= count; i++) {
			SectionPoint to = i == count ? arc.end() : arc.at((double) i / count).nearest();
			curves.add(new CurveSegment(from, aside(from.spot(), centre, handle), aside(to.spot(), centre, -handle), to));
			from = to;
		}
		return curves;
	}

	private static SectionPoint aside(Spot on, Spot centre, double handle) {
		return new Spot(on.x() - (on.y() - centre.y()) * handle, on.y() + (on.x() - centre.x()) * handle).nearest();
	}
}
