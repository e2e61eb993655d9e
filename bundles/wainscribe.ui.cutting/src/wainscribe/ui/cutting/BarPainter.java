// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.cutting;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;

import wainscribe.drawing.Tone;
import wainscribe.takeoff.cutting.HomePlan;
import wainscribe.takeoff.cutting.PlannedPiece;
import wainscribe.ui.cutting.BarSheet.Heading;
import wainscribe.ui.cutting.BarSheet.Part;
import wainscribe.ui.cutting.BarSheet.Strip;
import wainscribe.ui.drafting.appearance.Appearance;
import wainscribe.ui.drafting.appearance.TableColours;

/**
 * Paints headings and bars in the colours of the drawing table.
 *
 * @param colours of the drawing table
 * @param words   what is written
 * @param plan    the plan that is painted
 * @param bold    font of headings
 * @param marks   which pieces stand out
 */
record BarPainter(TableColours colours, PlanWords words, HomePlan plan, Font bold, Marks marks) {

	private static final int INSET = 4;
	private static final int BAND = 6;

	/** Which pieces stand out and why. */
	interface Marks {

		/** Tells whether the designer chose a piece. */
		boolean isChosen(PlannedPiece piece);

		/** Tells whether a piece is lit: pointed at, or chosen on the elevation. */
		boolean isLit(PlannedPiece piece);
	}

	/** Paints a heading. */
	void paint(GC gc, Heading heading) {
		Font plain = gc.getFont();
		gc.setFont(bold);
		gc.setForeground(colour(colours.drawing().ink()));
		gc.drawText(heading.text(), INSET * 3, heading.y(), SWT.DRAW_TRANSPARENT);
		gc.setFont(plain);
	}

	/** Paints a bar with its words, pieces and leftover. */
	void paint(GC gc, Strip strip) {
		gc.setForeground(colour(colours.drawing().note()));
		gc.drawText(words.of(strip.bar()), strip.x(), strip.y(), SWT.DRAW_TRANSPARENT);
		String left = words.left(strip.bar(), plan);
		int leftWidth = gc.textExtent(left).x;
		int nameWidth = gc.textExtent(words.of(strip.bar())).x;
		int leftX = Math.max(strip.x() + strip.width() - leftWidth, strip.x() + nameWidth + 4 * INSET);
		gc.setForeground(colour(colours.drawing().note()));
		gc.drawText(left, leftX, strip.y(), SWT.DRAW_TRANSPARENT);
		leftover(gc, strip);
		strip.parts().forEach(part -> part(gc, strip, part));
		gc.setForeground(colour(colours.drawing().quiet()));
		gc.setLineStyle(SWT.LINE_SOLID);
		gc.drawRectangle(strip.x(), strip.strip(), strip.width(), strip.height());
	}

	/** What is kept is plain, what is not is hatched. */
	private void leftover(GC gc, Strip strip) {
		int x = strip.end();
		int width = strip.x() + strip.width() - x;
		gc.setBackground(colour(colours.drawing().wall()));
		gc.fillRectangle(strip.x(), strip.strip(), strip.width(), strip.height());
		gc.setForeground(colour(colours.drawing().quiet()));
		if (strip.trim() > 0) {
			hatch(gc, strip.x(), strip.strip(), strip.trim(), strip.height());
		}
		if (!plan.isOffcut(strip.bar().remainder())) {
			hatch(gc, x, strip.strip(), width, strip.height());
		}
	}

	private static void hatch(GC gc, int x, int y, int width, int height) {
		Rectangle around = gc.getClipping();
		gc.setClipping(around.intersection(new Rectangle(x, y, Math.max(0, width), height)));
		for (int at = x - height; at < x + width; at += BAND) {
			gc.drawLine(at, y + height, at + height, y);
		}
		gc.setClipping(around);
	}

	private void part(GC gc, Strip strip, Part part) {
		boolean chosen = marks.isChosen(part.piece());
		boolean lit = marks.isLit(part.piece());
		boolean gone = part.piece().piece().isEmpty();
		Tone fill = lit ? colours.hover() : strip.accepted() || gone ? colours.drawing().lower() : colours.drawing().trim();
		gc.setBackground(colour(fill));
		gc.fillRectangle(part.x(), strip.strip(), part.width(), strip.height());
		gc.setForeground(colour(chosen ? colours.select() : gone ? colours.drawing().quiet() : colours.drawing().ink()));
		gc.setLineStyle(gone ? SWT.LINE_DASH : SWT.LINE_SOLID);
		gc.drawRectangle(part.x(), strip.strip(), part.width() - 1, strip.height() - 1);
		if (chosen) {
			gc.drawRectangle(part.x() + 1, strip.strip() + 1, part.width() - 3, strip.height() - 3);
		}
		gc.setForeground(colour(lit ? contrasting(fill) : colours.drawing().ink()));
		label(gc, strip, part);
	}

	/** As much of label and length as there is room for. */
	private void label(GC gc, Strip strip, Part part) {
		String length = words.length(part.piece());
		for (String text : new String[] { part.piece().label() + "  " + length, length, part.piece().label() }) { //$NON-NLS-1$
			Point size = gc.textExtent(text);
			if (size.x + 2 * INSET <= part.width()) {
				gc.drawText(text, part.x() + (part.width() - size.x) / 2, strip.strip() + (strip.height() - size.y) / 2,
						SWT.DRAW_TRANSPARENT);
				return;
			}
		}
	}

	private static Tone contrasting(Tone ground) {
		int light = (ground.red() * 299 + ground.green() * 587 + ground.blue() * 114) / 1000;
		return Tone.of(light > 127 ? 0x1f2123 : 0xffffff);
	}

	private static Color colour(Tone tone) {
		return Appearance.colour(tone);
	}
}
