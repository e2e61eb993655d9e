// SPDX-License-Identifier: EPL-2.0
package wainscribe.profile.imported;

import java.util.ArrayList;
import java.util.List;

import wainscribe.profile.section.ArcSegment;
import wainscribe.profile.section.CurveSegment;
import wainscribe.profile.section.SectionPoint;
import wainscribe.profile.section.Segment;
import wainscribe.profile.section.Spot;
import wainscribe.profile.section.StraightSegment;

/** Turns strokes in units of a drawing, y upwards, into exact segments. Strokes that round to nothing are left out. */
final class TracePen {

	private static final double FARTHEST = 10_000;

	private final double scale;
	private final List<Segment> segments = new ArrayList<>();
	private SectionPoint pen;

	TracePen(double millimetresPerUnit, double x, double y) {
		scale = millimetresPerUnit;
		pen = exact(x, y);
	}

	/** Refuses what is no place on a table: numbers that are none, and places farther than 10 m. */
	private SectionPoint exact(double x, double y) {
		if (!(Math.abs(x * scale) <= FARTHEST && Math.abs(y * scale) <= FARTHEST)) {
			throw new ArithmeticException("a point more than 10 m away"); //$NON-NLS-1$
		}
		return new Spot(x * scale, y * scale).nearest();
	}

	void lineTo(double x, double y) {
		SectionPoint to = exact(x, y);
		if (!to.equals(pen)) {
			add(new StraightSegment(pen, to));
		}
	}

	void curveTo(double x1, double y1, double x2, double y2, double x, double y) {
		CurveSegment curve = new CurveSegment(pen, exact(x1, y1), exact(x2, y2), exact(x, y));
		if (!(curve.end().equals(pen) && curve.first().equals(pen) && curve.second().equals(pen))) {
			add(curve);
		}
	}

	/** Draws an arc of a given rise, above 0 to the left of the way. */
	void arcTo(double x, double y, double rise) {
		SectionPoint to = exact(x, y);
		SectionPoint height = exact(rise, 0);
		if (height.x().signum() == 0 || to.equals(pen)) {
			lineTo(x, y);
		} else {
			add(new ArcSegment(pen, to, height.x()));
		}
	}

	private void add(Segment segment) {
		segments.add(segment);
		pen = segment.end();
	}

	List<Segment> segments() {
		return List.copyOf(segments);
	}
}
