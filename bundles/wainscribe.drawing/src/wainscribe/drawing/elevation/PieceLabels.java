// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing.elevation;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import wainscribe.drawing.Bounds;
import wainscribe.drawing.Label;
import wainscribe.drawing.LayerName;
import wainscribe.drawing.Point;
import wainscribe.drawing.Role;
import wainscribe.drawing.Subject;
import wainscribe.fabrication.CutList;
import wainscribe.fabrication.Piece;
import wainscribe.fabrication.PieceKind;
import wainscribe.layout.FrameOutline;
import wainscribe.layout.RoomDesign;
import wainscribe.layout.WallLayout;
import wainscribe.layout.glass.GlassFrame;
import wainscribe.model.Fixture;
import wainscribe.model.Wall;

/**
 * Writes the labels of the pieces to cut where they go, as far as there is room beside what is drawn already: those of runs on
 * the moulding, those of frames inside along their sides. Without the wall's name, which stands over the elevation.
 */
final class PieceLabels {

	private static final double SIZE = 1.7;
	private static final double CLEAR = 0.5;
	private static final double HALF = 0.5;
	private static final double[] ALONG = { 0.5, 0.25, 0.75, 0.12, 0.88 };

	private final Sheet sheet;
	private final Bounds bounds;
	private final WallLines lines;
	private final RoomDesign design;
	private final List<Bounds> taken = new ArrayList<>();

	PieceLabels(Sheet sheet, Bounds bounds, WallLines lines, RoomDesign design) {
		this.sheet = sheet;
		this.bounds = bounds;
		this.lines = lines;
		this.design = design;
	}

	void draw(Wall wall, CutList list) {
		String name = wall.getName() == null ? String.valueOf(wall.getRoom() == null ? 1 : wall.getRoom().getWalls().indexOf(wall) + 1)
				: wall.getName();
		sheet.texts().forEach(taken::add);
		wall.getBoxes().forEach(box -> taken.add(Sketches.bounds(box)));
		Map<String, FramePlace> frames = frames(wall, name);
		for (Piece piece : list.pieces()) {
			if (piece.wall().equals(name) && !piece.isReturn()) {
				if (piece.kind() == PieceKind.FRAME) {
					side(piece, frames, name);
				} else {
					run(piece, name);
				}
			}
		}
	}

	/** The inner edge of a frame's moulding and what it stands for. */
	private record FramePlace(Quad inner, Subject subject) {
	}

	private Map<String, FramePlace> frames(Wall wall, String name) {
		Map<String, FramePlace> places = new HashMap<>();
		double face = design.layout().profile().face().approximateMillimetres();
		for (FrameOutline frame : design.layout().of(wall).stream().flatMap(WallLayout::frames).toList()) {
			places.put(frame.id(), new FramePlace(Quad.of(frame).inset(face), Subject.frame(frame.id())));
		}
		for (Fixture fixture : wall.getFixtures()) {
			GlassFrame.of(design.home(), design.room(), design.brief(), fixture).filter(GlassFrame::leavesSight)
					.ifPresent(frame -> places.put(name + '/' + fixture.getName(),
							new FramePlace(Quad.of(Sketches.bounds(fixture).grown(-frame.lap().approximateMillimetres())),
									Subject.element(fixture.getId()))));
		}
		return places;
	}

	private void side(Piece piece, Map<String, FramePlace> frames, String wall) {
		int slash = piece.label().lastIndexOf('/');
		FramePlace place = slash < 0 ? null : frames.get(piece.label().substring(0, slash));
		if (place == null) {
			return;
		}
		int side = switch (piece.label().substring(slash + 1)) {
			case "bottom" -> 0;
			case "right" -> 1;
			case "top" -> 2;
			default -> 3;
		};
		Point from = place.inner().corner(side);
		Point to = place.inner().corner(side + 1);
		Point outward = place.inner().outward(side);
		double inside = sheet.paper(CLEAR + SIZE * HALF);
		Point middle = between(from, to, HALF).plus(-outward.x() * inside, -outward.y() * inside);
		boolean upright = side % 2 == 1;
		write(shortened(piece.label(), wall), place.subject(), middle, from.distance(to), upright);
	}

	private void run(Piece piece, String wall) {
		Span span = new Span(piece.x0().approximateMillimetres(), piece.x1().approximateMillimetres());
		List<Point> corners = switch (piece.kind()) {
			case RAIL -> design.layout().rail().map(rail -> lines.overFloor(span, rail.bottom().approximateMillimetres(),
					rail.top().approximateMillimetres())).orElse(List.of());
			case BASE -> lines.overFloor(span, 0, piece.section().face().approximateMillimetres());
			case CROWN -> lines.underCeiling(span, piece.section().face().approximateMillimetres());
			default -> List.of();
		};
		Subject subject = switch (piece.kind()) {
			case RAIL -> Subject.of(Subject.Kind.RAIL);
			case BASE -> Subject.of(Subject.Kind.BASE);
			default -> Subject.of(Subject.Kind.CROWN);
		};
		if (corners.isEmpty()) {
			return;
		}
		for (double share : ALONG) {
			Point middle = between(between(corners.get(0), corners.get(1), share), between(corners.get(3), corners.get(2), share), HALF);
			if (write(shortened(piece.label(), wall), subject, middle, span.to() - span.from(), false)) {
				return;
			}
		}
	}

	private static String shortened(String label, String wall) {
		boolean repeats = label.length() > wall.length() + 1 && label.startsWith(wall)
				&& "/-".indexOf(label.charAt(wall.length())) >= 0;
		return repeats ? label.substring(wall.length() + 1) : label;
	}

	/** Writes a label round a point if it has the room; tells whether it did. */
	private boolean write(String text, Subject subject, Point middle, double room, boolean upright) {
		double size = sheet.paper(SIZE);
		double width = sheet.metrics().width(text, size);
		double shift = size * (Label.CAP_HEIGHT - Label.TAIL) / 2;
		Point at = upright ? middle.plus(shift, 0) : middle.plus(0, -shift);
		Label label = sheet.label(subject, Role.NOTE, text, at, SIZE, Label.Anchor.MIDDLE, upright);
		Bounds block = label.bounds().grown(sheet.paper(CLEAR) * HALF);
		if (width + 2 * sheet.paper(CLEAR) > room || !bounds.contains(block) || taken.stream().anyMatch(block::overlaps)) {
			return false;
		}
		sheet.add(LayerName.PIECE, label);
		taken.add(block);
		return true;
	}

	private static Point between(Point from, Point to, double share) {
		return new Point(from.x() + (to.x() - from.x()) * share, from.y() + (to.y() - from.y()) * share);
	}
}
