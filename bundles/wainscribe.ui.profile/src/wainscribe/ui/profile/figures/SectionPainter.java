// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile.figures;

import java.util.List;

import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Path;
import org.eclipse.swt.widgets.Display;

import wainscribe.drawing.Point;
import wainscribe.drawing.Tone;
import wainscribe.ui.drafting.appearance.Appearance;
import wainscribe.ui.drafting.appearance.TableColours;

/** Paints the wall line and the section, with fractions of a pixel. */
final class SectionPainter {

	private static final int FACE = 2;
	private static final int BACK = 3;
	private static final int WALL = 14;
	private static final int SLANT = 7;
	private static final int SOLID_ALPHA = 150;
	private static final int TINT_ALPHA = 45;

	private final Graphics graphics;
	private final TableColours colours;

	SectionPainter(Graphics graphics, TableColours colours) {
		this.graphics = graphics;
		this.colours = colours;
	}

	/** Paints; over a backdrop the section is only tinted. */
	void paint(DeskPicture picture, Rectangle seen, boolean overPicture) {
		graphics.setAntialias(SWT.ON);
		wall(seen);
		if (picture.solid().size() > 2) {
			fill(picture.solid(), overPicture ? TINT_ALPHA : SOLID_ALPHA);
		}
		graphics.setLineCap(SWT.CAP_ROUND);
		graphics.setLineJoin(SWT.JOIN_ROUND);
		picture.back().forEach(course -> stroke(course, colours.drawing().accent(), BACK, SWT.LINE_SOLID));
		picture.face().forEach(course -> stroke(course, colours.drawing().ink(), FACE, SWT.LINE_SOLID));
		if (!picture.gap().isEmpty()) {
			stroke(picture.gap(), colours.guide(), 1, SWT.LINE_DOT);
		}
	}

	/** The wall is cut: slanted strokes behind its line. */
	private void wall(Rectangle seen) {
		if (seen.x > 0 || seen.right() < -WALL) {
			return;
		}
		Tone ink = colours.drawing().quiet();
		graphics.setForegroundColor(Appearance.colour(colours.drawing().ground().mixed(ink, 0.7)));
		graphics.setLineStyle(SWT.LINE_SOLID);
		graphics.setLineWidth(1);
		for (int y = Math.floorDiv(seen.y, SLANT) * SLANT - WALL; y <= seen.bottom() + WALL; y += SLANT) {
			graphics.drawLine(-WALL, y + WALL, -1, y);
		}
		graphics.setForegroundColor(Appearance.colour(ink));
		graphics.drawLine(0, seen.y, 0, seen.bottom());
	}

	private void fill(List<Point> outline, int alpha) {
		Path path = path(outline);
		try {
			path.close();
			graphics.setAlpha(alpha);
			graphics.setBackgroundColor(Appearance.colour(colours.drawing().trim().mixed(colours.drawing().accent(), 0.22)));
			graphics.fillPath(path);
			graphics.setAlpha(255);
		} finally {
			path.dispose();
		}
	}

	private void stroke(List<Point> course, Tone tone, int width, int style) {
		if (course.size() < 2) {
			return;
		}
		Path path = path(course);
		try {
			graphics.setForegroundColor(Appearance.colour(tone));
			graphics.setLineWidth(width);
			graphics.setLineStyle(style);
			graphics.drawPath(path);
		} finally {
			path.dispose();
		}
	}

	private static Path path(List<Point> course) {
		Path path = new Path(Display.getCurrent());
		path.moveTo((float) course.getFirst().x(), (float) course.getFirst().y());
		course.stream().skip(1).forEach(point -> path.lineTo((float) point.x(), (float) point.y()));
		return path;
	}
}
