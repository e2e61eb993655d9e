// SPDX-License-Identifier: EPL-2.0
package wainscribe.report.pdf;

import java.io.IOException;

import wainscribe.drawing.Bounds;
import wainscribe.drawing.Point;
import wainscribe.drawing.Style;
import wainscribe.drawing.pdf.PdfCanvas;
import wainscribe.report.view.StickView.MarkView;

/** Draws one strip of a story stick at full size. */
record StripPainter(PdfCanvas canvas, StripScale scale) {

	private static final double TEXT = 2.5;
	private static final double NAME = 2.3;
	private static final double BETWEEN = 3.2;
	private static final double MARK = 8;
	private static final double LEAD = 2.5;
	private static final double CROSS = 2.5;
	private static final double PAD = 1.5;

	/**
	 * Draws a strip. The tab before its first cross, or before the datum, carries its name.
	 *
	 * @param x      where it begins on the page
	 * @param y      its lower cutting line
	 * @param height distance to its upper cutting line
	 */
	void paint(StickStrip strip, double x, double y, double height) throws IOException {
		double zero = x + scale.overlap() - strip.from();
		double right = zero + strip.to() + (strip.isLast() ? PAD : scale.overlap());
		canvas.box(new Bounds(x, y, right, y + height), Style.stroked(Ink.LINE, 0.2, 1.0, 1.0));
		ruler(strip, zero, right, y);
		if (strip.isFirst()) {
			canvas.line(zero, y, zero, y + height, Ink.line());
		} else {
			cross(zero + strip.from(), y + height - CROSS - PAD, strip.number() - 2);
		}
		if (!strip.isLast()) {
			cross(zero + strip.to(), y + height - CROSS - PAD, strip.number() - 1);
		}
		name(strip, x, y, height);
		marks(strip, zero, y, height);
	}

	private void name(StickStrip strip, double x, double y, double height) throws IOException {
		String part = "strip " + strip.number() + " of " + strip.count();
		String datum = strip.isFirst() ? "datum: " + (strip.stick().upwards() ? "finished floor" : "left end") : "";
		double from = y + PAD;
		double widest = height - 2 * PAD;
		canvas.text(strip.stick().title(), new Point(x + NAME, from), NAME, Ink.TEXT, false, true, widest);
		canvas.text(part, new Point(x + NAME * 2.2, from), NAME, Ink.SOFT, false, true, widest);
		if (!datum.isEmpty()) {
			canvas.text(datum, new Point(x + NAME * 3.4, from), NAME, Ink.TEXT, true, true, widest);
		}
	}

	private void ruler(StickStrip strip, double zero, double right, double y) throws IOException {
		int first = (int) Math.ceil(strip.from() / scale.tick() - 1e-9);
		int last = (int) Math.floor((right - zero) / scale.tick() + 1e-9);
		for (int i = first; i <= last; i++) {
			double at = zero + i * scale.tick();
			boolean whole = i % scale.numbered() == 0;
			canvas.line(at, y, at, y + (whole ? 3 : 1.5), Ink.rule());
			if (whole && at + 5 < right) {
				canvas.text(String.valueOf(i / scale.numbered() * scale.number()), at + 0.5, y + 3.4, TEXT * 0.8, Ink.SOFT, false);
			}
		}
	}

	/** The same cross stands on both strips that meet there. */
	private void cross(double x, double y, int joint) throws IOException {
		canvas.line(x - CROSS, y, x + CROSS, y, Ink.line());
		canvas.line(x, y - CROSS, x, y + CROSS, Ink.line());
		canvas.text(letters(joint), x + 0.6, y + 0.6, TEXT, Ink.TEXT, true);
	}

	/** Letters a to z, then aa, ab and so on. */
	static String letters(int index) {
		String last = String.valueOf((char) ('a' + index % 26));
		return index < 26 ? last : letters(index / 26 - 1) + last;
	}

	/** Texts of marks close together step aside, each joined to its mark by a line; in the overlaps only the line stands. */
	private void marks(StickStrip strip, double zero, double y, double height) throws IOException {
		double next = Double.NEGATIVE_INFINITY;
		for (MarkView mark : strip.marks()) {
			double at = zero + mark.at();
			canvas.line(at, y, at, y + MARK, Ink.line());
			if (mark.at() >= strip.from() && mark.at() <= strip.to()) {
				double text = Math.max(at, next);
				canvas.line(at, y + MARK, text, y + MARK + LEAD, Ink.line());
				canvas.text(mark.text(), new Point(text + TEXT * 0.36, y + MARK + LEAD + 0.8), TEXT, Ink.TEXT, false, true,
						height - MARK - LEAD - 2 * CROSS - 2 * PAD);
				next = text + BETWEEN;
			}
		}
	}
}
