// SPDX-License-Identifier: EPL-2.0
package wainscribe.cli.text;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

import wainscribe.layout.Alternative;
import wainscribe.layout.FrameOutline;
import wainscribe.layout.FrameRole;
import wainscribe.layout.PlainStretch;
import wainscribe.layout.RoomLayout;
import wainscribe.layout.RunLayout;
import wainscribe.layout.StripKind;
import wainscribe.layout.StripOutline;
import wainscribe.layout.WallLayout;
import wainscribe.layout.axes.AxisCheck;
import wainscribe.layout.axes.AxisFit;
import wainscribe.model.length.Length;
import wainscribe.model.length.LengthFormat;
import wainscribe.model.length.LengthUnit;

/** Layouts for people: the room's values, then every run with its count and width. */
public final class LayoutText {

	private final StringBuilder text = new StringBuilder();
	private final LengthUnit units;

	private LayoutText(LengthUnit units) {
		this.units = units;
	}

	/** Returns the text, ending in a line break. */
	public static String of(Collection<RoomLayout> layouts, LengthUnit units) {
		LayoutText writer = new LayoutText(units);
		layouts.forEach(writer::room);
		return layouts.isEmpty() ? "No rooms.\n" : writer.text.toString(); //$NON-NLS-1$
	}

	private void room(RoomLayout layout) {
		text.append(text.isEmpty() ? "" : "\n").append(layout.room().getName()).append(": ").append(layout.pattern()) //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
				.append(clear(layout));
		layout.rail().ifPresent(rail -> text.append(", rail ").append(shown(rail.bottom())).append(" to ").append(shown(rail.top()))); //$NON-NLS-1$ //$NON-NLS-2$
		text.append(", ").append(count(layout)).append(layout.proved() ? ", proved best" : "") //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$ //$NON-NLS-4$
				.append('\n');
		layout.walls().forEach(this::wall);
		AxisCheck.of(layout).forEach(this::axis);
		layout.infeasible().forEach(this::plain);
		layout.alternatives().forEach(this::alternative);
	}

	private String clear(RoomLayout layout) {
		if (layout.strips().findAny().isEmpty()) {
			return ", gap " + shown(layout.gap()) + ", vertical gap " + shown(layout.gapY()); //$NON-NLS-1$ //$NON-NLS-2$
		}
		return ", fields " + shown(layout.gap()) + (layout.gapY().signum() == 0 ? "" : " x " + shown(layout.gapY())); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
	}

	private static String count(RoomLayout layout) {
		long strips = layout.strips().count();
		long frames = layout.frames().count();
		return strips == 0 ? frames + " frames" : strips + " strips" + (frames == 0 ? "" : ", " + frames + " frames"); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$ //$NON-NLS-4$ //$NON-NLS-5$
	}

	private void wall(WallLayout wall) {
		for (RunLayout run : wall.runs()) {
			text.append("  wall ").append(wall.wall().getName()).append(", ").append(run.tier().word()).append(", ") //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
					.append(shown(run.x0())).append(" to ").append(shown(run.x1())).append(": ") //$NON-NLS-1$ //$NON-NLS-2$
					.append(run.strips().isEmpty() ? String.valueOf(run.frames().size()) : strips(run));
			if (!run.frames().isEmpty()) {
				text.append(" of ").append(widths(run)).append(" x ") //$NON-NLS-1$ //$NON-NLS-2$
						.append(shown(run.frames().get(0).height()));
			}
			text.append(run.reason().isEmpty() ? "" : " - " + run.reason()).append('\n'); //$NON-NLS-1$ //$NON-NLS-2$
		}
	}

	/** Tells the kinds of strips and their number, and the size of an upright one: {@code 6 stiles of 64 x 700, 5 rails of 64}. */
	private String strips(RunLayout run) {
		List<String> parts = new ArrayList<>();
		for (StripKind kind : StripKind.values()) {
			List<StripOutline> strips = run.strips().stream().filter(strip -> strip.kind() == kind).toList();
			if (!strips.isEmpty()) {
				StripOutline first = strips.getFirst();
				parts.add(strips.size() + " " + kind.word() + (strips.size() == 1 ? "" : "s") + " of " + shown(first.width()) + " x " //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$ //$NON-NLS-4$ //$NON-NLS-5$
						+ shown(first.height()));
			}
		}
		return String.join(", ", parts); //$NON-NLS-1$
	}

	/** Frames of a run are equal but for a wide one in the centre: {@code 400 (centre 800)}. */
	private String widths(RunLayout run) {
		Length side = run.frames().getFirst().width();
		FrameOutline centre = run.frames().get(run.frames().size() / 2);
		boolean wide = centre.role() == FrameRole.RUN && centre.width().minus(side).isMoreThan(units.tapeMark());
		return wide ? shown(side) + " (centre " + shown(centre.width()) + ')' : shown(side); //$NON-NLS-1$
	}

	private void axis(AxisFit fit) {
		text.append("  wall ").append(fit.wall().getName()).append(", ").append(fit.axis().name()).append(" at ") //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
				.append(shown(fit.axis().at())).append(", ").append(fit.tier().word()).append(": ").append(fit.sentence(units)) //$NON-NLS-1$ //$NON-NLS-2$
				.append('\n');
	}

	private void plain(PlainStretch stretch) {
		String wall = stretch.wall() == null ? "" : "wall " + stretch.wall().getName() + ": "; //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
		text.append("  not possible: ").append(wall).append(stretch.reason()) //$NON-NLS-1$
				.append(stretch.nearest().isEmpty() ? "" : " " + stretch.nearest()).append('\n'); //$NON-NLS-1$ //$NON-NLS-2$
	}

	private void alternative(Alternative alternative) {
		text.append("  or: ").append(alternative.sentence()).append('\n'); //$NON-NLS-1$
	}

	private String shown(Length length) {
		return LengthFormat.asShown(length, units);
	}
}
