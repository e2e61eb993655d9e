// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing.elevation;

import java.util.List;

import wainscribe.drawing.Bounds;
import wainscribe.drawing.LayerName;
import wainscribe.drawing.Path;
import wainscribe.drawing.Point;
import wainscribe.drawing.Role;
import wainscribe.drawing.Subject;
import wainscribe.model.Opening;
import wainscribe.model.OpeningKind;
import wainscribe.model.Swing;

/** Draws doors and windows with casing, stool and apron. */
final class OpeningSketch {

	private static final double STOOL_THICKNESS = 25;
	private static final double STOOL_HORN = 20;
	private static final double JAMB = 6;
	private static final double SASH = 45;
	private static final double TALL = 1.2;
	private static final double WIDE = 1.5;

	private final Sheet sheet;

	OpeningSketch(Sheet sheet) {
		this.sheet = sheet;
	}

	void draw(Opening opening) {
		Bounds jambs = Sketches.bounds(opening);
		if (jambs.width() <= 0 || jambs.height() <= 0) {
			return;
		}
		Subject subject = Subject.element(opening.getId());
		casing(opening, subject, jambs);
		Pencil pencil = new Pencil(sheet, LayerName.OPENING, subject, jambs);
		if (opening.getKind() == OpeningKind.WINDOW) {
			window(pencil);
		} else {
			door(opening, pencil);
		}
	}

	private void casing(Opening opening, Subject subject, Bounds jambs) {
		double casing = TreatmentSketch.millimetres(opening.getCasing());
		Bounds inner = jambs.grown(TreatmentSketch.millimetres(opening.getReveal()));
		Bounds outer = inner.grown(casing);
		boolean window = opening.getKind() == OpeningKind.WINDOW;
		boolean sill = window && (opening.getStool() != null || opening.getApron() != null);
		double foot = window && !sill ? outer.y0() : jambs.y0();
		double innerFoot = window && !sill ? inner.y0() : jambs.y0();
		if (casing > 0) {
			piece(subject, outer.x0(), foot, inner.x0(), innerFoot, inner.x0(), inner.y1(), outer.x0(), outer.y1());
			piece(subject, inner.x1(), innerFoot, outer.x1(), foot, outer.x1(), outer.y1(), inner.x1(), inner.y1());
			piece(subject, inner.x0(), inner.y1(), inner.x1(), inner.y1(), outer.x1(), outer.y1(), outer.x0(), outer.y1());
			if (window && !sill) {
				piece(subject, outer.x0(), outer.y0(), outer.x1(), outer.y0(), inner.x1(), inner.y0(), inner.x0(),
						inner.y0());
			}
		}
		if (sill) {
			sill(opening, subject, jambs, outer);
		}
	}

	private void sill(Opening opening, Subject subject, Bounds jambs, Bounds outer) {
		double apron = opening.getApron() == null ? outer.x1() - jambs.x1()
				: TreatmentSketch.millimetres(opening.getApron());
		double stool = Math.min(STOOL_THICKNESS, apron / 2);
		if (apron > 0) {
			sheet.box(LayerName.OPENING, subject, Role.CASING,
					new Bounds(outer.x0(), jambs.y0() - apron, outer.x1(), jambs.y0() - stool));
			sheet.box(LayerName.OPENING, subject, Role.CASING,
					new Bounds(outer.x0() - STOOL_HORN, jambs.y0() - stool, outer.x1() + STOOL_HORN, jambs.y0()));
		}
	}

	private void piece(Subject subject, double... corners) {
		sheet.add(LayerName.OPENING, Path.polygon(subject, Role.CASING, List.of(new Point(corners[0], corners[1]),
				new Point(corners[2], corners[3]), new Point(corners[4], corners[5]), new Point(corners[6], corners[7]))));
	}

	private static void window(Pencil pencil) {
		pencil.whole(Role.LEAF);
		double x = Math.min(0.3, SASH / pencil.area().width());
		double y = Math.min(0.3, SASH / pencil.area().height());
		double ratio = pencil.area().height() / pencil.area().width();
		if (ratio > TALL) {
			pencil.box(Role.GLASS, x, y, 1 - x, 0.5 - y / 2);
			pencil.box(Role.GLASS, x, 0.5 + y / 2, 1 - x, 1 - y);
		} else if (1 / ratio > WIDE) {
			pencil.box(Role.GLASS, x, y, 0.5 - x / 2, 1 - y);
			pencil.box(Role.GLASS, 0.5 + x / 2, y, 1 - x, 1 - y);
		} else {
			pencil.box(Role.GLASS, x, y, 1 - x, 1 - y);
		}
	}

	private static void door(Opening opening, Pencil pencil) {
		Swing swing = opening.getSwing();
		if (swing == Swing.NONE) {
			pencil.whole(Role.OPENING_LINE);
			return;
		}
		pencil.whole(Role.CASING);
		double jamb = Math.min(0.1, JAMB / pencil.area().width());
		pencil.box(Role.LEAF, jamb, 0.005, 1 - jamb, 1 - jamb / 2);
		if (swing == Swing.BYPASS) {
			pencil.line(Role.OPENING_LINE, 0.5, 0.005, 0.5, 1 - jamb / 2);
			pencil.box(Role.FIXTURE_LINE, 0.44, 0.4, 0.46, 0.55);
			pencil.box(Role.FIXTURE_LINE, 0.54, 0.4, 0.56, 0.55);
			return;
		}
		pencil.box(Role.OPENING_LINE, 0.16, 0.08, 0.84, 0.42);
		pencil.box(Role.OPENING_LINE, 0.16, 0.5, 0.84, 0.93);
		boolean right = swing == Swing.IN_RIGHT || swing == Swing.OUT_RIGHT;
		pencil.circle(Role.FIXTURE_METAL, right ? 0.09 : 0.91, 0.46, 0.03);
		if (swing != Swing.UNRECORDED) {
			double hinge = right ? 1 - jamb : jamb;
			pencil.line(Role.SWING, 1 - hinge, 0.005, hinge, 0.5);
			pencil.line(Role.SWING, hinge, 0.5, 1 - hinge, 1 - jamb / 2);
		}
	}
}
