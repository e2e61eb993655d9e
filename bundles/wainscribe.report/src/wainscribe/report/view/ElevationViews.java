// SPDX-License-Identifier: EPL-2.0
package wainscribe.report.view;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

import wainscribe.drawing.Drawing;
import wainscribe.drawing.LayerName;
import wainscribe.drawing.elevation.ElevationDrawing;
import wainscribe.drawing.elevation.ElevationOptions;
import wainscribe.drawing.svg.SvgLook;
import wainscribe.drawing.svg.SvgWriter;
import wainscribe.layout.FrameOutline;
import wainscribe.layout.RoomDesign;
import wainscribe.layout.RunLayout;
import wainscribe.layout.WallLayout;
import wainscribe.layout.setout.FrameMarks;
import wainscribe.layout.setout.Mark;
import wainscribe.layout.setout.RunMarks;
import wainscribe.layout.setout.SetOut;
import wainscribe.layout.setout.StripMarks;
import wainscribe.model.Wall;
import wainscribe.report.files.ElevationPlan;

/** Makes the views of walls. */
final class ElevationViews {

	/** What a client sees in the finished room: no measures, nothing behind the face. */
	private static final Set<LayerName> SEEN = EnumSet.complementOf(
			EnumSet.of(LayerName.DIMENSION, LayerName.TEXT, LayerName.SERVICE, LayerName.HATCH, LayerName.PIECE));

	private final ElevationDrawing elevation;
	private final List<String> extensions;

	/**
	 * Creates a maker.
	 *
	 * @param elevation  draws
	 * @param extensions of the files that a pack holds for each elevation
	 */
	ElevationViews(ElevationDrawing elevation, List<String> extensions) {
		this.elevation = elevation;
		this.extensions = extensions;
	}

	ElevationView of(ElevationPlan plan, RoomColours colours, Wording wording) {
		RoomDesign design = plan.room().design();
		Wall wall = plan.wall();
		ElevationOptions options = ElevationOptions.of(design.home());
		String description = description(design, wall, wording);
		Drawing working = elevation.draw(design, wall, options);
		String painted = "";
		if (colours.hasColours(wall)) {
			Drawing seen = elevation.draw(design, wall, options.withLayers(SEEN));
			painted = new SvgWriter(SvgLook.written(colours.palette(wall).styles(), seen.scale())).element(seen,
					plan.fileName() + "-painted", "In the colours chosen. " + description);
		}
		return new ElevationView(Wording.text(wall.getName()), description,
				new SvgWriter(SvgLook.classes()).element(working, plan.fileName(), description), painted,
				extensions.stream().map(extension -> "elevations/" + plan.fileName() + "." + extension).toList(),
				marks(design, wall, wording), reasons(design, wall));
	}

	private static String description(RoomDesign design, Wall wall, Wording wording) {
		int frames = frames(design, wall).size();
		int strips = (int) design.layout().of(wall).stream().flatMap(WallLayout::strips).count();
		String treated = frames > 0 || strips == 0 ? count(frames, "frame") + (strips == 0 ? "" : " and " + count(strips, "strip"))
				: count(strips, "strip");
		return "Elevation of wall " + Wording.text(wall.getName()) + ", " + wording.length(wall.getLength()) + " long, with "
				+ count(wall.getOpenings().size(), "opening") + ", " + count(wall.getFixtures().size(), "fixture") + ", "
				+ count(wall.getBoxes().size(), "plate") + " and " + treated + ".";
	}

	private static String count(int number, String what) {
		return (number == 0 ? "no" : String.valueOf(number)) + " " + what + (number == 1 ? "" : "s");
	}

	private static List<FrameOutline> frames(RoomDesign design, Wall wall) {
		return design.layout().of(wall).stream().flatMap(WallLayout::frames).toList();
	}

	private static List<MarkRow> marks(RoomDesign design, Wall wall, Wording wording) {
		return design.layout().of(wall).map(layout -> SetOut.of(layout, wording.unit())).stream()
				.flatMap(setOut -> Stream.concat(
						setOut.runs().stream().flatMap(run -> run.frames().stream().map(frame -> row(run, frame, wording))),
						setOut.strips().stream().map(strip -> row(strip, wording))))
				.toList();
	}

	/** A strip is cut to its own length, and its marks say all gaps. */
	private static MarkRow row(StripMarks strip, Wording wording) {
		return new MarkRow(strip.id(), wording.mark(strip.left().onTape()), wording.mark(strip.right().onTape()),
				both(strip.bottomLeft(), strip.bottomRight(), wording), both(strip.topLeft(), strip.topRight(), wording),
				"by the cut list", "as marked");
	}

	private static MarkRow row(RunMarks run, FrameMarks frame, Wording wording) {
		return new MarkRow(frame.id(), wording.mark(frame.left().onTape()), wording.mark(frame.right().onTape()),
				both(frame.bottomLeft(), frame.bottomRight(), wording), both(frame.topLeft(), frame.topRight(), wording),
				run.cutWidth(frame).map(wording::mark).orElse("by hand"), run.gapLeft().map(wording::mark).orElse("by hand"));
	}

	private static String both(Mark left, Mark right, Wording wording) {
		return left.equals(right) ? wording.mark(left.onTape())
				: wording.mark(left.onTape()) + " / " + wording.mark(right.onTape());
	}

	private static List<String> reasons(RoomDesign design, Wall wall) {
		return design.layout().of(wall).stream().flatMap(layout -> layout.runs().stream()).map(RunLayout::reason)
				.filter(reason -> !reason.isBlank()).distinct().toList();
	}
}
