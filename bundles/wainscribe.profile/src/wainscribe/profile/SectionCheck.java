// SPDX-License-Identifier: EPL-2.0
package wainscribe.profile;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import wainscribe.profile.ProfileSection.Arc;
import wainscribe.profile.ProfileSection.Edge;

/** Tells what is wrong with a section before anyone cuts to it. Keeps no state. */
public final class SectionCheck {

	private static final double CLOSE = 1e-6;
	private static final int STEPS = 48;

	/**
	 * Checks the section of a profile: closed, not crossing itself, and exactly as wide and thick as the profile says.
	 *
	 * @param profile any profile
	 * @return one sentence for each fault, naming the point in millimetres; empty when the section is sound
	 */
	public List<String> faults(TrimProfile profile) {
		List<Edge> outline = profile.section().outline();
		List<String> faults = new ArrayList<>();
		addGaps(outline, faults);
		if (!faults.isEmpty()) {
			return faults;
		}
		List<double[]> points = points(outline);
		addSize(points, profile, faults);
		addCrossings(points, faults);
		return faults;
	}

	private static void addGaps(List<Edge> outline, List<String> faults) {
		Edge before = outline.getLast();
		for (Edge edge : outline) {
			if (Math.hypot(edge.x0() - before.x1(), edge.y0() - before.y1()) > CLOSE) {
				faults.add("the section is open at " + point(before.x1(), before.y1())); //$NON-NLS-1$
			}
			if (edge instanceof Arc arc && missesEnd(arc)) {
				faults.add("an arc does not end at " + point(arc.x1(), arc.y1())); //$NON-NLS-1$
			}
			before = edge;
		}
	}

	private static boolean missesEnd(Arc arc) {
		double[] end = arc.at(1);
		return Math.hypot(end[0] - arc.x1(), end[1] - arc.y1()) > CLOSE;
	}

	private static void addSize(List<double[]> points, TrimProfile profile, List<String> faults) {
		double face = profile.face().approximateMillimetres();
		double thickness = profile.thickness().approximateMillimetres();
		double[] low = { Double.MAX_VALUE, Double.MAX_VALUE };
		double[] high = { -Double.MAX_VALUE, -Double.MAX_VALUE };
		for (double[] point : points) {
			for (int i = 0; i < 2; i++) {
				low[i] = Math.min(low[i], point[i]);
				high[i] = Math.max(high[i], point[i]);
			}
		}
		if (Math.abs(low[0]) > CLOSE || Math.abs(high[0] - face) > CLOSE) {
			faults.add("the section runs from " + number(low[0]) + " to " + number(high[0]) + " along the wall, not from 0 to " //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
					+ number(face));
		}
		if (Math.abs(low[1]) > CLOSE || Math.abs(high[1] - thickness) > CLOSE) {
			faults.add("the section stands from " + number(low[1]) + " to " + number(high[1]) + " off the wall, not from 0 to " //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
					+ number(thickness));
		}
	}

	private static void addCrossings(List<double[]> points, List<String> faults) {
		int count = points.size();
		for (int i = 0; i < count; i++) {
			for (int j = i + 2; j < count; j++) {
				boolean neighbours = i == 0 && j == count - 1;
				if (!neighbours && cross(points.get(i), points.get(i + 1), points.get(j), points.get((j + 1) % count))) {
					faults.add("the section crosses itself near " + point(points.get(i)[0], points.get(i)[1])); //$NON-NLS-1$
					return;
				}
			}
		}
	}

	/** Returns points along the outline, each once; arcs are followed in short chords. */
	private static List<double[]> points(List<Edge> outline) {
		List<double[]> points = new ArrayList<>();
		for (Edge edge : outline) {
			points.add(new double[] { edge.x0(), edge.y0() });
			if (edge instanceof Arc arc) {
				for (int i = 1; i < STEPS; i++) {
					points.add(arc.at((double) i / STEPS));
				}
			}
		}
		return points;
	}

	/** Tells whether two stretches have a point in common; touching counts. */
	private static boolean cross(double[] a, double[] b, double[] c, double[] d) {
		double abc = turn(a, b, c);
		double abd = turn(a, b, d);
		double cda = turn(c, d, a);
		double cdb = turn(c, d, b);
		return abc * abd < -CLOSE * CLOSE && cda * cdb < -CLOSE * CLOSE || on(a, b, c, abc) || on(a, b, d, abd)
				|| on(c, d, a, cda) || on(c, d, b, cdb);
	}

	private static double turn(double[] a, double[] b, double[] c) {
		return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
	}

	private static boolean on(double[] a, double[] b, double[] c, double turn) {
		return Math.abs(turn) < CLOSE * CLOSE && Math.min(a[0], b[0]) - CLOSE < c[0] && c[0] < Math.max(a[0], b[0]) + CLOSE
				&& Math.min(a[1], b[1]) - CLOSE < c[1] && c[1] < Math.max(a[1], b[1]) + CLOSE;
	}

	private static String point(double x, double y) {
		return number(x) + ", " + number(y); //$NON-NLS-1$
	}

	private static String number(double value) {
		return String.format(Locale.ROOT, "%.3f", value); //$NON-NLS-1$
	}
}
