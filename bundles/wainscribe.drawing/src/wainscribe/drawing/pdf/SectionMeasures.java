// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing.pdf;

import java.io.IOException;
import java.util.Locale;

import org.eclipse.osgi.util.NLS;

import wainscribe.drawing.Point;
import wainscribe.drawing.Style;
import wainscribe.drawing.text.Messages;
import wainscribe.model.length.Length;
import wainscribe.model.length.LengthFormat;
import wainscribe.model.length.LengthUnit;
import wainscribe.profile.TrimProfile;

/** Writes the measures of a section: face width and projection as dimensions, girth and area in words. */
record SectionMeasures(PdfCanvas canvas, LengthUnit unit) {

	private static final double AWAY = 8;
	private static final double OVER = 1.5;
	private static final double TEXT = 3;
	private static final double INCH = 25.4;
	private static final Style LINE = Style.stroked(ProfileSheet.INK, 0.13);

	/** Returns girth and area in the unit of the sheet. */
	String sentence(TrimProfile profile) {
		double girth = profile.girthMillimetres();
		double area = profile.areaSquareMillimetres();
		return unit == LengthUnit.INCH
			? NLS.bind(Messages.SectionMeasures_Inches, number("%.2f", girth / INCH), number("%.3f", area / INCH / INCH)) //$NON-NLS-1$ //$NON-NLS-2$
			: NLS.bind(Messages.SectionMeasures_Millimetres, number("%.1f", girth), number("%.0f", area)); //$NON-NLS-1$ //$NON-NLS-2$
	}

	private static String number(String form, double value) {
		return String.format(Locale.ROOT, form, value);
	}

	/** Draws the face width left of the section and the projection under it. */
	void draw(TrimProfile profile, Point corner) throws IOException {
		double width = profile.face().approximateMillimetres();
		double out = profile.thickness().approximateMillimetres();
		double x = corner.x() - AWAY;
		double y = corner.y() - AWAY;
		tick(x, corner.y());
		tick(x, corner.y() + width);
		canvas.line(x, corner.y() - OVER, x, corner.y() + width + OVER, LINE);
		String face = shown(profile.face());
		canvas.text(face, new Point(x - 1.2, corner.y() + (width - canvas.face().width(face, TEXT)) / 2), TEXT, ProfileSheet.INK, false, true,
				Double.POSITIVE_INFINITY);
		tick(corner.x(), y);
		tick(corner.x() + out, y);
		canvas.line(corner.x() - OVER, y, corner.x() + out + OVER, y, LINE);
		String projection = shown(profile.thickness());
		canvas.text(projection, corner.x() + (out - canvas.face().width(projection, TEXT)) / 2, y - 4.5, TEXT, ProfileSheet.INK, false);
	}

	private String shown(Length length) {
		return LengthFormat.asShown(length, unit);
	}

	/** A carpenter's stroke across the dimension line. */
	private void tick(double x, double y) throws IOException {
		canvas.line(x - 1, y - 1, x + 1, y + 1, Style.stroked(ProfileSheet.INK, 0.25));
	}
}
