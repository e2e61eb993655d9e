// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.site;

import java.util.ArrayList;
import java.util.List;

import wainscribe.layout.Tier;
import wainscribe.layout.pattern.BandEdge;
import wainscribe.layout.pattern.TierBand;
import wainscribe.layout.solver.Band;
import wainscribe.layout.solver.Limits;
import wainscribe.layout.solver.Line;
import wainscribe.layout.solver.Quad;
import wainscribe.layout.solver.StripSizes;
import wainscribe.layout.solver.WallTask;
import wainscribe.model.Placed;
import wainscribe.model.PlacedFrame;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.model.outline.Outline;
import wainscribe.model.outline.Outlines;
import wainscribe.model.outline.WallShape;

/**
 * A wall as a layout problem, and the way back from its numbers to the survey.
 *
 * @param wall     the wall
 * @param task     the problem
 * @param tiers    the tier of each band of the task
 * @param elements the surveyed elements by their numbers
 */
record WallSite(Wall wall, WallTask task, List<Tier> tiers, List<Placed> elements) {

	/**
	 * Sets up the problem of a wall.
	 *
	 * @param wall    the wall
	 * @param survey  what is on it
	 * @param bands   bands of the pattern
	 * @param railTop top of the rail above the floor line, null without a rail
	 * @param limits  sizes that hold in the room
	 * @param strips  sizes of strips, null for frames
	 */
	static WallSite of(Wall wall, WallSurvey survey, List<TierBand> bands, Length railTop, Limits limits, StripSizes strips) {
		Lines lines = new Lines(wall, railTop);
		List<List<Quad>> placed = new ArrayList<>();
		List<Band> open = bands.stream().map(lines::band).toList();
		open.forEach(band -> placed.add(new ArrayList<>()));
		List<Quad> extra = new ArrayList<>();
		for (PlacedFrame frame : wall.getPlacedFrames()) {
			lines.place(frame, open, placed, extra);
		}
		List<Band> filled = new ArrayList<>();
		List<Tier> tiers = new ArrayList<>();
		for (int i = 0; i < open.size(); i++) {
			Band band = open.get(i);
			filled.add(new Band(band.bottom(), band.top(), band.x0(), band.x1(), band.underWindows(), placed.get(i)));
			tiers.add(bands.get(i).tier());
		}
		if (strips != null) {
			addParts(filled, tiers, new OpeningParts(limits, strips, new WallTask(List.of(), survey.barriers(), List.of()).barriers()));
		}
		if (!extra.isEmpty()) {
			filled.add(new Band(lines.floor, lines.ceiling, 0, lines.length, false, extra));
			tiers.add(Tier.EXTRA);
		}
		return new WallSite(wall, new WallTask(filled, survey.barriers(), survey.islands()), tiers, survey.elements());
	}

	private static void addParts(List<Band> filled, List<Tier> tiers, OpeningParts openings) {
		for (Band tier : List.copyOf(filled)) {
			if (tier.placed().isEmpty() && tier.x0() < tier.x1()) {
				openings.of(tier).forEach(part -> {
					filled.add(part.band());
					tiers.add(part.over() ? Tier.OVER : Tier.UNDER);
				});
			}
		}
	}

	/** The floor and ceiling line of a wall and the bands between them. */
	private static final class Lines {

		private final long length;
		private final Line floor;
		private final Line ceiling;
		private final WallShape shape;
		private final boolean heightKnown;
		private final Length railTop;

		Lines(Wall wall, Length railTop) {
			this.railTop = railTop;
			shape = WallShape.of(wall);
			length = shape.length().units();
			long run = Math.max(1, length);
			floor = new Line(0, shape.floorRight().units(), run);
			ceiling = new Line(shape.ceilingLeft().units(), shape.ceilingRight().minus(shape.ceilingLeft()).units(), run);
			heightKnown = shape.ceilingLeft().signum() > 0 || shape.ceilingRight().isMoreThan(shape.floorRight());
		}

		/** A band exists where its top, and the rail over it, are below the ceiling. */
		Band band(TierBand band) {
			Line bottom = line(band.bottom());
			Line top = line(band.top());
			Line highest = top;
			if (railTop != null && band.top().datum() == BandEdge.Datum.FLOOR && band.top().offset().isLessThan(railTop)) {
				highest = floor.up(railTop.units());
			}
			boolean checked = heightKnown && band.top().datum() == BandEdge.Datum.FLOOR;
			boolean left = !checked || highest.at(0) <= ceiling.at(0);
			boolean right = !checked || highest.at(length) <= ceiling.at(length);
			long x0 = left ? 0 : right ? boundary(highest, length, 0) : length;
			long x1 = right ? length : left ? boundary(highest, 0, length) : 0;
			return new Band(bottom, top, x0, x1, band.underWindows(), List.of());
		}

		private long boundary(Line highest, long inside, long outside) {
			long in = inside;
			long out = outside;
			while (Math.abs(in - out) > 1) {
				long middle = Math.floorDiv(in + out, 2);
				if (highest.at(middle) <= ceiling.at(middle)) {
					in = middle;
				} else {
					out = middle;
				}
			}
			return in;
		}

		private Line line(BandEdge edge) {
			return edge.datum() == BandEdge.Datum.FLOOR ? floor.up(edge.offset().units()) : ceiling.up(-edge.offset().units());
		}

		/** A placed frame belongs to the tier in which its centre lies, and follows that tier's slopes. */
		void place(PlacedFrame frame, List<Band> bands, List<List<Quad>> placed, List<Quad> extra) {
			if (frame.getWidth() == null || frame.getWidth().signum() <= 0 || frame.getHeight() == null
					|| frame.getHeight().signum() <= 0) {
				return;
			}
			Outline outline = Outlines.of(frame);
			long x = outline.x0().units();
			long width = outline.width().units();
			long y = outline.y0().units() + floor.at(x);
			long height = outline.height().units();
			long centre = y + height / 2;
			for (int i = 0; i < bands.size(); i++) {
				Band band = bands.get(i);
				if (band.bottom().at(x) <= centre && centre < band.top().at(x)) {
					placed.get(i).add(new Quad(x, width, y, height, band.bottom().at(x + width) - band.bottom().at(x),
							band.top().at(x + width) - band.top().at(x)));
					return;
				}
			}
			extra.add(new Quad(x, width, y, height, 0, 0));
		}
	}
}
