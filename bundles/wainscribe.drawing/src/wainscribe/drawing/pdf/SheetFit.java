// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing.pdf;

import java.util.List;
import java.util.function.DoubleFunction;

import wainscribe.drawing.Bounds;
import wainscribe.drawing.Drawing;
import wainscribe.model.length.LengthUnit;

/**
 * A drawing with the paper and the scale that suit it.
 *
 * @param drawing the drawing, its letters sized for the scale
 * @param paper   the sheet
 * @param scale   the scale
 */
public record SheetFit(Drawing drawing, PaperSize paper, DrawingScale scale) {

	/** Space kept on every sheet round the drawing for heading, scale bar and foot, millimetres. */
	public static final double SIDE = 12;
	/** Space kept above the drawing. */
	public static final double HEAD = 20;
	/** Space kept below the drawing. */
	public static final double FOOT = 24;
	/** On small paper no drawing is smaller than this while large paper would do. */
	private static final double SMALLEST_ON_SMALL = 25;

	/**
	 * Finds the largest scale at which a drawing fits a sheet, small sheets before large ones. What fits none gets a sheet
	 * of its own size at the smallest scale.
	 *
	 * @param unit    unit of the home: decides scales and sheets
	 * @param drawing draws at a scale
	 */
	public static SheetFit of(LengthUnit unit, DoubleFunction<Drawing> drawing) {
		List<DrawingScale> scales = DrawingScale.of(unit);
		SheetFit fallback = null;
		for (DrawingScale scale : scales) {
			Drawing drawn = drawing.apply(scale.ratio());
			for (PaperSize paper : PaperSize.all(unit)) {
				SheetFit fit = new SheetFit(drawn, paper, scale);
				boolean small = !paper.name().equals(PaperSize.large(unit).name());
				if (fit.fits() && (small || scale.ratio() >= 2 * SMALLEST_ON_SMALL)) {
					return fit;
				}
				if (fit.fits() && fallback == null && scale.ratio() >= SMALLEST_ON_SMALL * 0.8) {
					fallback = fit;
				}
			}
			if (fallback != null && scale.ratio() >= SMALLEST_ON_SMALL - 1) {
				return fallback;
			}
		}
		return ownSize(drawing.apply(scales.getLast().ratio()), scales.getLast());
	}

	private static SheetFit ownSize(Drawing drawing, DrawingScale scale) {
		Bounds extent = drawing.extent();
		return new SheetFit(drawing, new PaperSize("own size", extent.width() / scale.ratio() + 2 * SIDE,
				extent.height() / scale.ratio() + HEAD + FOOT), scale);
	}

	private boolean fits() {
		Bounds extent = drawing.extent();
		return extent.width() / scale.ratio() <= paper.width() - 2 * SIDE
				&& extent.height() / scale.ratio() <= paper.height() - HEAD - FOOT;
	}

	/** Returns where the wall's left end comes on the sheet, so that the drawing stands in the middle. */
	public double left() {
		Bounds extent = drawing.extent();
		return SIDE + (paper.width() - 2 * SIDE - extent.width() / scale.ratio()) / 2 - extent.x0() / scale.ratio();
	}

	/** Returns where the finished floor comes on the sheet, so that the drawing stands in the middle. */
	public double bottom() {
		Bounds extent = drawing.extent();
		return FOOT + (paper.height() - HEAD - FOOT - extent.height() / scale.ratio()) / 2 - extent.y0() / scale.ratio();
	}
}
