// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.directedit;

import java.util.Optional;

import wainscribe.commands.MoveElementCommand;
import wainscribe.commands.MoveRailCommand;
import wainscribe.commands.ResizeElementCommand;
import wainscribe.commands.SetDecisionCommand;
import wainscribe.drawing.Dimension;
import wainscribe.layout.RailBand;
import wainscribe.layout.RoomDesign;
import wainscribe.model.Opening;
import wainscribe.model.Room;
import wainscribe.model.Wall;
import wainscribe.model.WainscribePackage.Literals;
import wainscribe.model.length.Length;
import wainscribe.model.outline.Outline;
import wainscribe.model.outline.Outlines;
import wainscribe.ui.elevation.Messages;

/** Says what typing another number into a dimension of a wall's drawing would change. */
final class DrawnNumbers {

	private final RoomDesign design;
	private final Room room;
	private final Wall wall;

	DrawnNumbers(RoomDesign design, Wall wall) {
		this.design = design;
		this.room = design.room();
		this.wall = wall;
	}

	/** Returns the number behind a dimension; empty when it only follows from others. */
	Optional<TypedNumber> of(Dimension dimension) {
		return switch (dimension.subject().kind()) {
			case RAIL -> design.layout().rail().map(rail -> rail(rail, dimension.to()));
			case BASE -> Optional.of(new TypedNumber(Messages.DrawnNumbers_Base, design.brief().base(),
					length -> new SetDecisionCommand(room, Literals.BRIEF__BASE, length, Messages.DrawnNumbers_Base)));
			case ELEMENT, WALL -> dimension.axis() == Dimension.Axis.LEVEL ? level(dimension) : plumb(dimension);
			case FRAME -> FrameNumbers.of(design, wall, dimension);
			default -> Optional.empty();
		};
	}

	private TypedNumber rail(RailBand rail, Length mark) {
		if (mark.equals(rail.top())) {
			return new TypedNumber(Messages.DrawnNumbers_RailTop, rail.top(), length -> new MoveRailCommand(room, length));
		}
		Length face = rail.top().minus(rail.bottom());
		return new TypedNumber(Messages.DrawnNumbers_RailUnderside, rail.bottom(),
				length -> new MoveRailCommand(room, length.plus(face)));
	}

	/** A distance that ends at an opening moves it; the width of one sizes it. */
	private Optional<TypedNumber> level(Dimension dimension) {
		for (Opening opening : wall.getOpenings()) {
			Outline outline = Outlines.of(opening);
			if (outline.x0().equals(dimension.from()) && outline.x1().equals(dimension.to())) {
				return Optional.of(new TypedNumber(Messages.DrawnNumbers_Width, outline.width(), length -> new ResizeElementCommand(
						opening, Outline.ofSize(outline.x0(), outline.y0(), length, outline.height()))));
			}
			if (outline.x0().equals(dimension.to())) {
				return Optional.of(new TypedNumber(Messages.DrawnNumbers_FromLeft, dimension.length(),
						length -> new MoveElementCommand(opening, dimension.from().plus(length), outline.y0())));
			}
		}
		return Optional.empty();
	}

	/** The height of a sill moves the opening; the height of its head sizes it. */
	private Optional<TypedNumber> plumb(Dimension dimension) {
		for (Opening opening : wall.getOpenings()) {
			Outline outline = Outlines.of(opening);
			if (outline.y1().equals(dimension.to())) {
				return Optional.of(new TypedNumber(Messages.DrawnNumbers_Head, outline.y1(), length -> new ResizeElementCommand(
						opening, new Outline(outline.x0(), outline.y0(), outline.x1(), length.max(outline.y0())))));
			}
			if (outline.y0().signum() > 0 && outline.y0().equals(dimension.to())) {
				return Optional.of(new TypedNumber(Messages.DrawnNumbers_Sill, outline.y0(),
						length -> new MoveElementCommand(opening, outline.x0(), length)));
			}
		}
		return Optional.empty();
	}
}
