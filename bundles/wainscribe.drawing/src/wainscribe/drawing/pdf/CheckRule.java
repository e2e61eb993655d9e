// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing.pdf;

import java.io.IOException;

import org.eclipse.osgi.util.NLS;

import wainscribe.drawing.Style;
import wainscribe.drawing.text.Messages;
import wainscribe.model.length.LengthUnit;

/** A rule of 100 mm or 4 in on a sheet at true size: laid against a tape it shows whether the printer kept the size. */
record CheckRule(PdfCanvas canvas, LengthUnit unit) {

	private static final double INCH = 25.4;
	private static final double TEXT = 2.8;

	/** Returns the length of the rule in millimetres. */
	double length() {
		return unit == LengthUnit.INCH ? 4 * INCH : 100;
	}

	/** Draws the rule with its lower left end at a place. */
	void draw(double x, double y) throws IOException {
		Style line = Style.stroked(ProfileSheet.INK, 0.2);
		int marks = unit == LengthUnit.INCH ? 16 : 20;
		int whole = unit == LengthUnit.INCH ? 4 : 2;
		canvas.line(x, y, x + length(), y, line);
		for (int i = 0; i <= marks; i++) {
			double at = x + length() * i / marks;
			canvas.line(at, y, at, y + (i % whole == 0 ? 4 : 2.2), line);
		}
		String name = unit == LengthUnit.INCH ? "4\"" : "100 mm"; //$NON-NLS-1$ //$NON-NLS-2$
		canvas.text(NLS.bind(Messages.CheckRule_Print, name), x, y + 6, TEXT, ProfileSheet.INK, false);
	}
}
