// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing.elevation;

import java.util.ArrayList;
import java.util.List;

import wainscribe.drawing.Bounds;
import wainscribe.drawing.LayerName;
import wainscribe.drawing.Path;
import wainscribe.drawing.Point;
import wainscribe.drawing.Role;
import wainscribe.drawing.Subject;
import wainscribe.layout.FrameOutline;
import wainscribe.layout.RailBand;
import wainscribe.layout.RoomDesign;
import wainscribe.layout.StripOutline;
import wainscribe.model.ExistingTrim;
import wainscribe.model.ProfileUse;
import wainscribe.model.TrimType;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.profile.ProfileCatalogue;

/** Draws the mouldings of a wall: those that stay, and the new base, rail, crown, frames and strips. */
final class TreatmentSketch {

	private final Sheet sheet;
	private final WallLines lines;
	private final MouldingSketch mouldings;
	private final ProfileCatalogue catalogue;
	private final RoomDesign design;

	TreatmentSketch(Sheet sheet, WallLines lines, ProfileCatalogue catalogue, RoomDesign design) {
		this.sheet = sheet;
		this.lines = lines;
		this.catalogue = catalogue;
		this.design = design;
		mouldings = new MouldingSketch(sheet);
	}

	void draw(Wall wall) {
		wall.getTrims().stream().filter(TreatmentSketch::stays).forEach(this::existing);
		if (!"none".equals(design.layout().pattern())) {
			base(wall);
			design.layout().rail().ifPresent(rail -> rail(wall, rail));
			crown(wall);
			design.layout().of(wall).ifPresent(layout -> {
				layout.frames().forEach(this::frame);
				layout.strips().forEach(this::strip);
			});
		}
	}

	static boolean stays(ExistingTrim trim) {
		return !Boolean.FALSE.equals(trim.getKeep());
	}

	private void existing(ExistingTrim trim) {
		Span span = span(trim);
		double bottom = millimetres(trim.getY());
		double top = bottom + millimetres(trim.getHeight());
		if (span.to() > span.from() && top > bottom) {
			boolean raked = Boolean.TRUE.equals(trim.getRaked()) || trim.getType() == TrimType.BASE;
			sheet.add(LayerName.TRIM_EXISTING, Path.polygon(Subject.element(trim.getId()), Role.TRIM_EXISTING,
					raked ? lines.overFloor(span, bottom, top) : level(span, bottom, top)));
		}
	}

	private static List<Point> level(Span span, double bottom, double top) {
		return Quad.of(new Bounds(span.from(), bottom, span.to(), top)).corners();
	}

	private Span span(ExistingTrim trim) {
		double from = millimetres(trim.getX());
		return new Span(from, trim.getWidth() == null ? lines.length() : from + millimetres(trim.getWidth()));
	}

	private void base(Wall wall) {
		double height = millimetres(design.brief().base());
		band(LayerName.BASE, Subject.Kind.BASE, ProfileUse.BASE, wall, TrimType.BASE, 0, height);
	}

	private void rail(Wall wall, RailBand rail) {
		band(LayerName.RAIL, Subject.Kind.RAIL, ProfileUse.RAIL, wall, TrimType.CHAIR_RAIL, millimetres(rail.bottom()),
				millimetres(rail.top()));
	}

	private void band(LayerName layer, Subject.Kind kind, ProfileUse use, Wall wall, TrimType kept, double bottom,
			double top) {
		if (top <= bottom) {
			return;
		}
		for (Span clear : lines.clearOverFloor(bottom, top)) {
			for (Span span : clear.without(kept(wall, kept))) {
				mouldings.band(layer, Subject.of(kind), lines.overFloor(span, bottom, top), relief(use, Relief.PLAIN));
			}
		}
	}

	private void crown(Wall wall) {
		double drop = millimetres(design.brief().crown());
		if (drop <= 0) {
			return;
		}
		for (Span clear : lines.clearUnderCeiling(drop)) {
			for (Span span : clear.without(kept(wall, TrimType.CROWN))) {
				mouldings.band(LayerName.CROWN, Subject.of(Subject.Kind.CROWN), lines.underCeiling(span, drop),
						relief(ProfileUse.CROWN, Relief.PLAIN));
			}
		}
	}

	private List<Span> kept(Wall wall, TrimType type) {
		List<Span> spans = new ArrayList<>();
		wall.getTrims().stream().filter(trim -> trim.getType() == type && stays(trim)).forEach(trim -> spans.add(span(trim)));
		return spans;
	}

	/** Level ones between upright ones: no end covers another. */
	private void strip(StripOutline strip) {
		Relief relief = catalogue.find(design.layout().profile().id()).map(Relief::of).orElse(Relief.PLAIN);
		if (strip.kind().isUpright()) {
			mouldings.upright(LayerName.STRIP, Subject.strip(strip.id()), Quad.of(strip), relief);
		} else {
			mouldings.band(LayerName.STRIP, Subject.strip(strip.id()), Quad.of(strip).corners(), relief);
		}
	}

	private void frame(FrameOutline frame) {
		Relief relief = catalogue.find(design.layout().profile().id()).map(Relief::of).orElse(Relief.PLAIN);
		mouldings.frame(LayerName.FRAME, Subject.frame(frame.id()), Quad.of(frame),
				millimetres(design.layout().profile().face()), relief);
	}

	private Relief relief(ProfileUse use, Relief otherwise) {
		String id = design.brief().profiles().get(use);
		return id == null ? otherwise : catalogue.find(id).map(Relief::of).orElse(otherwise);
	}

	static double millimetres(Length length) {
		return length == null ? 0 : length.approximateMillimetres();
	}
}
