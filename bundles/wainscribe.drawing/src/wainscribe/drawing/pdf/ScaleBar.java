// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing.pdf;

import java.io.IOException;
import java.util.List;

import wainscribe.drawing.Bounds;
import wainscribe.drawing.Style;
import wainscribe.drawing.Tone;
import wainscribe.model.length.LengthUnit;

/** A bar by which a printed drawing can be checked with a rule. */
public final class ScaleBar {

	private static final double HEIGHT = 1.6;
	private static final double TEXT = 2.4;
	private static final double LONGEST = 60;
	private static final int FIELDS = 4;
	private static final double FOOT = 304.8;
	private static final List<Double> METRIC = List.of(4000.0, 2000.0, 1000.0, 500.0, 250.0, 100.0);
	private static final List<Double> FEET = List.of(4.0, 2.0, 1.0, 0.5);

	private final LengthUnit unit;
	private final double scale;

	/**
	 * Creates a bar.
	 *
	 * @param unit  of the numbers on it
	 * @param scale millimetres on the wall for one of paper
	 */
	public ScaleBar(LengthUnit unit, double scale) {
		this.unit = unit;
		this.scale = scale;
	}

	/** Returns how long the bar is on the wall, millimetres. */
	public double length() {
		return FIELDS * field();
	}

	private double field() {
		List<Double> fields = unit == LengthUnit.INCH ? FEET.stream().map(feet -> feet * FOOT).toList() : METRIC;
		return fields.stream().filter(field -> FIELDS * field / scale <= LONGEST).findFirst().orElse(fields.getLast());
	}

	/**
	 * Draws the bar.
	 *
	 * @param x left end, millimetres from the left edge of the page
	 * @param y lower edge, millimetres from the lower edge of the page
	 * @throws IOException if the document fails
	 */
	public void draw(PdfCanvas canvas, double x, double y, Tone ink, Tone ground) throws IOException {
		double step = field() / scale;
		for (int i = 0; i < FIELDS; i++) {
			canvas.box(new Bounds(x + i * step, y, x + (i + 1) * step, y + HEIGHT),
					Style.outlined(i % 2 == 0 ? ink : ground, ink, 0.15));
		}
		for (int i = 0; i <= FIELDS; i += 2) {
			String text = label(i * field());
			canvas.text(text, x + i * step - canvas.face().width(text, TEXT) / 2, y + HEIGHT + 1.2, TEXT, ink, false);
		}
	}

	private String label(double millimetres) {
		if (unit == LengthUnit.INCH) {
			return Math.round(millimetres / FOOT) + "'";
		}
		return length() >= 4000 ? Math.round(millimetres / 1000) + " m" : Math.round(millimetres) + (millimetres == 0 ? "" : " mm");
	}
}
