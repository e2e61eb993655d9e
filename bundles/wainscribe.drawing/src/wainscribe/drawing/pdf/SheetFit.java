// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing.pdf;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;

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
	/** Details can be read at scales up to this one, so large paper is better than a smaller drawing. */
	private static final double SMALLEST_READABLE = 25;
	private static final String OWN_SIZE = "a sheet of its own size";

	/**
	 * Finds paper and scale for a drawing: the largest scale that fits small paper, then large paper, as long as details can
	 * be read; only then smaller scales, on whichever paper takes the larger one. What fits none gets a sheet of its own size.
	 *
	 * @param unit    unit of the home: decides scales and sheets
	 * @param drawing draws at a scale
	 */
	public static SheetFit of(LengthUnit unit, DoubleFunction<Drawing> drawing) {
		Map<Boolean, List<DrawingScale>> scales = DrawingScale.of(unit).stream()
				.collect(Collectors.partitioningBy(scale -> scale.ratio() <= SMALLEST_READABLE));
		List<PaperSize> small = List.of(PaperSize.small(unit).turned(), PaperSize.small(unit));
		List<PaperSize> large = List.of(PaperSize.large(unit).turned());
		List<PaperSize> all = Stream.concat(small.stream(), large.stream()).toList();
		return first(scales.get(true), small, drawing).or(() -> first(scales.get(true), large, drawing))
				.or(() -> first(scales.get(false), all, drawing))
				.orElseGet(() -> ownSize(scales.get(false).getFirst(), drawing));
	}

	private static Optional<SheetFit> first(List<DrawingScale> scales, List<PaperSize> papers,
			DoubleFunction<Drawing> drawing) {
		for (DrawingScale scale : scales) {
			Drawing drawn = drawing.apply(scale.ratio());
			for (PaperSize paper : papers) {
				SheetFit fit = new SheetFit(drawn, paper, scale);
				if (fit.fits()) {
					return Optional.of(fit);
				}
			}
		}
		return Optional.empty();
	}

	private static SheetFit ownSize(DrawingScale scale, DoubleFunction<Drawing> drawing) {
		Drawing drawn = drawing.apply(scale.ratio());
		Bounds extent = drawn.extent();
		return new SheetFit(drawn, new PaperSize(OWN_SIZE, extent.width() / scale.ratio() + 2 * SIDE,
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
