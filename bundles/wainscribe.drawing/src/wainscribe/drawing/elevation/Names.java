// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing.elevation;

import java.util.ArrayList;
import java.util.List;

import wainscribe.drawing.Bounds;
import wainscribe.drawing.Label;
import wainscribe.drawing.LayerName;
import wainscribe.drawing.Point;
import wainscribe.drawing.Role;
import wainscribe.drawing.Subject;
import wainscribe.layout.FrameOutline;
import wainscribe.layout.Member;
import wainscribe.layout.RoomDesign;
import wainscribe.layout.StripOutline;
import wainscribe.model.Element;
import wainscribe.model.Fixture;
import wainscribe.model.FixtureType;
import wainscribe.model.Opening;
import wainscribe.model.OpeningKind;
import wainscribe.model.Placed;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;

/** Writes names where there is room for them: on frames, beside strips, on openings and fixtures; a name without room is left out. */
final class Names {

	private static final double TITLE_SIZE = 3.6;
	private static final double NAME_SIZE = 2.4;
	private static final double ABOVE_WALL = 5;
	private static final double CLEAR = 0.8;
	private static final double LINE = 1.35;
	private static final double[] MIDDLE = { 0 };
	private static final double[] IN_FRAME = { 0, 0.5, -0.5, 0.9, -0.9 };

	private final Sheet sheet;
	private final Bounds wall;
	private final List<Bounds> taken = new ArrayList<>();

	/**
	 * Creates a writer of names.
	 *
	 * @param bounds of the wall; beyond it stand the dimensions, so no name leaves it
	 */
	Names(Sheet sheet, Bounds bounds) {
		this.sheet = sheet;
		wall = bounds;
	}

	void draw(RoomDesign design, Wall surveyed, String title) {
		sheet.add(LayerName.TEXT, sheet.label(Subject.of(Subject.Kind.WALL), Role.TITLE, title,
				new Point(0, sheet.extent(wall).y1() + sheet.paper(ABOVE_WALL)), TITLE_SIZE, Label.Anchor.START, false));
		surveyed.getBoxes().forEach(box -> taken.add(Sketches.bounds(box)));
		surveyed.getFixtures().forEach(fixture -> name(fixture));
		surveyed.getOpenings().forEach(opening -> name(opening));
		surveyed.getFixtures().forEach(fixture -> taken.add(Sketches.bounds(fixture)));
		surveyed.getOpenings().forEach(opening -> taken.add(Sketches.bounds(opening)));
		double face = design.layout().profile().face().approximateMillimetres();
		design.layout().of(surveyed).ifPresent(layout -> {
			layout.frames().forEach(frame -> name(frame, shortName(frame, surveyed), face));
			layout.strips().forEach(strip -> taken.add(new Bounds(strip.x().approximateMillimetres(),
					strip.y().approximateMillimetres(), strip.right().approximateMillimetres(), strip.top().approximateMillimetres())));
			layout.strips().forEach(strip -> name(strip, shortName(strip, surveyed)));
		});
	}

	private void name(Placed placed) {
		write(Subject.element(placed.getId()), Sketches.bounds(placed), List.of(textOf(placed)), places(placed));
	}

	/** Where the sketch of a thing has few lines: shares of the way from its middle to its edge, the best first. */
	private static double[] places(Placed placed) {
		if (placed instanceof Opening opening) {
			return opening.getKind() == OpeningKind.WINDOW ? new double[] { -0.5, 0.5, 0 } : new double[] { -0.08, 0.5, -0.5 };
		}
		boolean mirror = placed instanceof Fixture fixture && fixture.getType() == FixtureType.MIRROR;
		return mirror ? new double[] { -0.5, -0.85 } : new double[] { 0.5, 0, -0.5 };
	}

	private static String textOf(Element element) {
		return element.getName() == null ? "" : element.getName().strip();
	}

	/** On its own wall a frame needs no wall's name before its number. */
	private static String shortName(Member frame, Wall surveyed) {
		String prefix = textOf(surveyed) + '-';
		return frame.id().startsWith(prefix) && frame.id().length() > prefix.length() ? frame.id().substring(prefix.length())
				: frame.id();
	}

	/** A strip is too narrow for its name, which stands in the field beside its foot, or over it when it lies level. */
	private void name(StripOutline strip, String name) {
		double height = sheet.paper(NAME_SIZE) * 2;
		double width = sheet.metrics().width(name, sheet.paper(NAME_SIZE)) + 3 * sheet.paper(CLEAR);
		double left = strip.x().approximateMillimetres();
		double right = strip.right().approximateMillimetres();
		double foot = strip.y().plus(strip.rise().max(Length.ZERO)).approximateMillimetres();
		double top = strip.top().approximateMillimetres();
		List<Bounds> places = strip.kind().isUpright()
				? List.of(new Bounds(right, foot, right + width, foot + height), new Bounds(left - width, foot, left, foot + height))
				: List.of(new Bounds(left, top, right, top + height));
		Subject subject = Subject.strip(strip.id());
		places.stream().filter(place -> write(subject, place, List.of(name), MIDDLE)).findFirst();
	}

	private void name(FrameOutline frame, String name, double face) {
		Quad inner = Quad.of(frame).inset(face);
		String size = Mark.text(frame.width(), sheet.options().unit()) + " \u00d7 "
				+ Mark.text(frame.height(), sheet.options().unit());
		Subject subject = Subject.frame(frame.id());
		if (!write(subject, inner, List.of(name, size))) {
			write(subject, inner, List.of(name));
		}
	}

	/** On a slope there is the more height the less of the width the lines take. */
	private boolean write(Subject subject, Quad field, List<String> lines) {
		double left = field.corner(0).x();
		double right = field.corner(1).x();
		double middle = (left + right) / 2;
		double half = Math.min((right - left) / 2, width(lines) / 2 + 2 * sheet.paper(CLEAR));
		double bottom = Math.max(height(field, 0, 1, middle - half), height(field, 0, 1, middle + half));
		double top = Math.min(height(field, 3, 2, middle - half), height(field, 3, 2, middle + half));
		return half > 0 && top > bottom
				&& write(subject, new Bounds(middle - half, bottom, middle + half, top), lines, IN_FRAME);
	}

	/** Returns the height of the side between two corners at x. */
	private static double height(Quad field, int from, int to, double x) {
		double run = field.corner(to).x() - field.corner(from).x();
		double share = run == 0 ? 0 : (x - field.corner(from).x()) / run;
		return field.corner(from).y() + share * (field.corner(to).y() - field.corner(from).y());
	}

	private double width(List<String> lines) {
		double size = sheet.paper(NAME_SIZE);
		return lines.stream().mapToDouble(line -> sheet.metrics().width(line, size)).max().orElse(0);
	}

	/** Writes lines below each other in an area, at the first of some places where nothing is in the way. */
	private boolean write(Subject subject, Bounds area, List<String> lines, double... places) {
		double size = sheet.paper(NAME_SIZE);
		double width = width(lines);
		double height = size * (LINE * (lines.size() - 1) + Label.CAP_HEIGHT + Label.TAIL);
		if (width == 0 || width + 2 * sheet.paper(CLEAR) > area.width() || height > area.height()) {
			return false;
		}
		Point middle = area.centre();
		for (double share : places) {
			double y = middle.y() + share * (area.height() - height) / 2;
			Bounds block = new Bounds(middle.x() - width / 2, y - height / 2, middle.x() + width / 2, y + height / 2);
			if (wall.contains(block) && taken.stream().noneMatch(block.grown(sheet.paper(CLEAR))::overlaps)) {
				write(subject, block, lines, size);
				taken.add(block);
				return true;
			}
		}
		return false;
	}

	private void write(Subject subject, Bounds block, List<String> lines, double size) {
		double y = block.y1() - size * Label.CAP_HEIGHT;
		for (String line : lines) {
			sheet.add(LayerName.TEXT, sheet.label(subject, Role.NOTE, line, new Point(block.centre().x(), y), NAME_SIZE,
					Label.Anchor.MIDDLE, false));
			y -= size * LINE;
		}
	}
}
