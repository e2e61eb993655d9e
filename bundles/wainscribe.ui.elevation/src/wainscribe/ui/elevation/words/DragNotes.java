// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.words;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

import org.eclipse.osgi.util.NLS;

import wainscribe.layout.FrameOutline;
import wainscribe.layout.PlainStretch;
import wainscribe.layout.RoomDesign;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.model.length.LengthFormat;
import wainscribe.model.length.LengthUnit;
import wainscribe.model.outline.Outline;
import wainscribe.ui.elevation.Messages;
import wainscribe.ui.elevation.gaps.GapSpot;
import wainscribe.ui.elevation.table.LineKey;

/** What stands beside the pointer during a drag: first where the thing is, then what the room makes of it. */
public final class DragNotes {

	private static final int MOST_WIDTHS = 3;

	private DragNotes() {
	}

	/** Returns the note for a surveyed thing. */
	public static List<String> surveyed(RoomDesign design, Wall wall, Outline outline, boolean moved, LengthUnit unit) {
		List<String> lines = new ArrayList<>();
		lines.add(moved ? place(outline, unit) : size(outline, unit));
		lines.addAll(room(design, wall, unit));
		return lines;
	}

	/** Returns the note for the rail. */
	public static List<String> rail(RoomDesign design, Wall wall, Length top, LengthUnit unit) {
		List<String> lines = new ArrayList<>();
		lines.add(NLS.bind(Messages.DragNotes_RailTop, LengthFormat.asShown(top, unit)));
		lines.addAll(room(design, wall, unit));
		return lines;
	}

	/** Returns the note for an axis or a guide: where it is, and of an axis what is centred on it. */
	public static List<String> line(RoomDesign design, LineKey key, Length at, LengthUnit unit) {
		List<String> lines = new ArrayList<>();
		lines.add(NLS.bind(key.isPlumb() ? Messages.LineEditPart_FromLeft : Messages.LineEditPart_AboveFloor,
				LengthFormat.asShown(at, unit)));
		if (key.isAxis()) {
			AxisText.fits(design, key.wall(), at).forEach(fit -> lines.add(fit.sentence(unit)));
		}
		return lines;
	}

	/** Returns the note for the gap of the room: how wide it is, and how wide, or high, frames are with it. */
	public static List<String> gap(RoomDesign design, GapSpot spot, Length gap, LengthUnit unit) {
		List<String> lines = new ArrayList<>();
		String sizes = counted(design, spot.wall(), spot.upright() ? FrameOutline::height : FrameOutline::width, unit);
		String shown = LengthFormat.asTapeMark(gap, unit);
		if (sizes.isEmpty()) {
			lines.add(NLS.bind(Messages.DragNotes_Gap, shown));
		} else {
			lines.add(NLS.bind(spot.upright() ? Messages.DragNotes_GapFramesHigh : Messages.DragNotes_GapFramesWide, shown, sizes));
		}
		plain(design, spot.wall()).ifPresent(lines::add);
		return lines;
	}

	private static Optional<String> plain(RoomDesign design, Wall wall) {
		return design.layout().infeasible().stream().filter(stretch -> stretch.wall() == wall).findFirst().map(PlainStretch::reason);
	}

	/** Returns the note for a frame. */
	public static List<String> frame(RoomDesign design, Wall wall, Outline outline, LengthUnit unit) {
		List<String> lines = new ArrayList<>();
		lines.add(size(outline, unit));
		lines.add(place(outline, unit));
		String neighbours = gaps(design, wall, outline, unit);
		if (!neighbours.isEmpty()) {
			lines.add(neighbours);
		}
		return lines;
	}

	private static String place(Outline outline, LengthUnit unit) {
		return NLS.bind(Messages.DragNotes_Place, LengthFormat.asShown(outline.x0(), unit),
				LengthFormat.asShown(outline.y0(), unit));
	}

	private static String size(Outline outline, LengthUnit unit) {
		return NLS.bind(Messages.DragNotes_Size, LengthFormat.asShown(outline.width(), unit),
				LengthFormat.asShown(outline.height(), unit));
	}

	private static List<String> room(RoomDesign design, Wall wall, LengthUnit unit) {
		List<String> lines = new ArrayList<>();
		String widths = widths(design, wall, unit);
		if (!widths.isEmpty()) {
			lines.add(NLS.bind(Messages.DragNotes_Gap, LengthFormat.asTapeMark(design.layout().gap(), unit)));
			lines.add(widths);
		}
		plain(design, wall).ifPresent(lines::add);
		return lines;
	}

	/** Returns how many frames of which width the wall gets: {@code 3 x 16", 1 x 22 1/2"}. */
	private static String widths(RoomDesign design, Wall wall, LengthUnit unit) {
		return counted(design, wall, FrameOutline::width, unit);
	}

	private static String counted(RoomDesign design, Wall wall, Function<FrameOutline, Length> size, LengthUnit unit) {
		Map<String, Integer> counts = new LinkedHashMap<>();
		design.layout().of(wall).ifPresent(layout -> layout.frames()
				.forEach(frame -> counts.merge(LengthFormat.asTapeMark(size.apply(frame), unit), 1, Integer::sum)));
		return String.join(", ", counts.entrySet().stream().limit(MOST_WIDTHS) //$NON-NLS-1$
				.map(entry -> NLS.bind(Messages.DragNotes_Frames, entry.getValue(), entry.getKey())).toList());
	}

	/** Returns the clear distances to the neighbours at the left and right. */
	private static String gaps(RoomDesign design, Wall wall, Outline outline, LengthUnit unit) {
		List<FrameOutline> others = design.layout().of(wall).map(layout -> layout.frames()
				.filter(frame -> frame.y().isLessThan(outline.y1()) && frame.top().isMoreThan(outline.y0())).toList())
				.orElse(List.of());
		String left = others.stream().map(FrameOutline::right).filter(right -> !right.isMoreThan(outline.x0()))
				.max(Length::compareTo).map(right -> LengthFormat.asShown(outline.x0().minus(right), unit)).orElse(null);
		String right = others.stream().map(FrameOutline::x).filter(x -> !x.isLessThan(outline.x1())).min(Length::compareTo)
				.map(x -> LengthFormat.asShown(x.minus(outline.x1()), unit)).orElse(null);
		if (left != null && right != null) {
			return NLS.bind(Messages.DragNotes_GapsLeftRight, left, right);
		}
		return left == null && right == null ? "" //$NON-NLS-1$
				: NLS.bind(Messages.DragNotes_Gap, left == null ? right : left);
	}
}
