// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.directedit;

import java.util.Optional;

import org.eclipse.draw2d.geometry.Point;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.gef.GraphicalEditPart;
import org.eclipse.gef.GraphicalViewer;

import wainscribe.commands.MoveElementCommand;
import wainscribe.commands.MoveLineCommand;
import wainscribe.commands.MoveRailCommand;
import wainscribe.commands.SetGapCommand;
import wainscribe.drawing.Dimension;
import wainscribe.drawing.LayerName;
import wainscribe.layout.RoomDesign;
import wainscribe.model.Placed;
import wainscribe.ui.elevation.Messages;
import wainscribe.ui.elevation.editparts.ThingEditPart;
import wainscribe.ui.elevation.editparts.WallEditPart;
import wainscribe.ui.elevation.table.DrawingTable;
import wainscribe.ui.elevation.table.FrameKey;
import wainscribe.ui.elevation.table.LineKey;
import wainscribe.ui.elevation.table.RailKey;

/** A number of the drawing at its place, ready to be typed. */
public final class DimensionEdit {

	private static final int REACH = 4;

	private final GraphicalEditPart part;
	private final DrawingTable table;
	private final TypedNumber number;
	private final Rectangle place;

	private DimensionEdit(GraphicalEditPart part, DrawingTable table, TypedNumber number, Rectangle place) {
		this.part = part;
		this.table = table;
		this.number = number;
		this.place = place;
	}

	/**
	 * Finds the number that a wall's dimensions show at a place.
	 *
	 * @param wall     the wall
	 * @param location a point on the viewer's control
	 */
	public static Optional<DimensionEdit> at(WallEditPart wall, Point location) {
		DrawingTable table = wall.table();
		Point point = location.getCopy();
		wall.getFigure().translateToRelative(point);
		return table.drawingOf(wall.getModel()).shapes(LayerName.DIMENSION).stream().filter(Dimension.class::isInstance)
				.map(Dimension.class::cast).filter(dimension -> pixels(wall, dimension).contains(point)).findFirst()
				.flatMap(dimension -> new DrawnNumbers(table.design(), wall.getModel()).of(dimension)
						.map(number -> new DimensionEdit(wall, table, number, pixels(wall, dimension))));
	}

	/** Returns the number that says first where a thing is: how far from the left, how high the rail, how wide a frame. */
	public static Optional<DimensionEdit> of(ThingEditPart part) {
		DrawingTable table = part.table();
		RoomDesign design = table.design();
		Optional<TypedNumber> number = switch (part.getModel()) {
			case Placed element when element.getX() != null && element.getY() != null -> Optional.of(new TypedNumber(
					Messages.DrawnNumbers_FromLeft, element.getX(),
					length -> new MoveElementCommand(element, length, element.getY())));
			case RailKey rail -> design.layout().rail().map(band -> new TypedNumber(Messages.DrawnNumbers_RailTop, band.top(),
					length -> new MoveRailCommand(design.room(), length)));
			case LineKey key -> Optional.of(new TypedNumber(
					key.isPlumb() ? Messages.DrawnNumbers_FromLeft : Messages.DrawnNumbers_AboveFloor, key.line().getAt(),
					length -> new MoveLineCommand(key.line(), length)));
			case FrameKey key -> FrameNumbers.width(design, key);
			default -> Optional.empty();
		};
		return number.map(found -> new DimensionEdit(part, table, found, part.getFigure().getBounds()));
	}

	/** Returns the gap of the room, to be typed beside a part. */
	public static DimensionEdit gap(GraphicalEditPart part, DrawingTable table) {
		TypedNumber number = new TypedNumber(Messages.DrawnNumbers_Gap, table.design().layout().gap(),
				length -> new SetGapCommand(table.session().room(), length));
		return new DimensionEdit(part, table, number, part.getFigure().getBounds());
	}

	/** Opens the field. */
	public void open() {
		Rectangle where = place.getCopy();
		part.getFigure().translateToAbsolute(where);
		new NumberField((GraphicalViewer) part.getViewer(), table, number, where);
	}

	private static Rectangle pixels(WallEditPart wall, Dimension dimension) {
		return wall.table().placeOf(wall.getModel()).pixels(dimension.label().bounds()).expand(REACH, REACH);
	}
}
