// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.editparts;

import java.util.Objects;

import org.eclipse.core.runtime.ILog;
import org.eclipse.gef.EditPart;
import org.eclipse.gef.EditPartFactory;

import wainscribe.model.Box;
import wainscribe.model.ExistingTrim;
import wainscribe.model.Fixture;
import wainscribe.model.Opening;
import wainscribe.model.Room;
import wainscribe.model.Service;
import wainscribe.model.Wall;
import wainscribe.ui.elevation.table.CentreKey;
import wainscribe.ui.elevation.table.DrawingTable;
import wainscribe.ui.elevation.table.FrameKey;
import wainscribe.ui.elevation.table.LineKey;
import wainscribe.ui.elevation.table.RailKey;
import wainscribe.ui.elevation.table.StripKey;

/** Makes the parts of a drawing table. What it does not know is logged and left out, so that the rest can be seen. */
public final class TableEditPartFactory implements EditPartFactory {

	private final DrawingTable table;

	/**
	 * Creates the factory.
	 *
	 * @param table the table the parts lie on
	 */
	public TableEditPartFactory(DrawingTable table) {
		this.table = Objects.requireNonNull(table);
	}

	@Override
	public EditPart createEditPart(EditPart context, Object model) {
		return switch (model) {
			case Room room -> new RoomEditPart(table, room);
			case Wall wall -> new WallEditPart(table, wall);
			case Opening opening -> new OpeningEditPart(table, opening);
			case Fixture fixture -> new FixtureEditPart(table, fixture);
			case Box box -> new BoxEditPart(table, box);
			case ExistingTrim trim -> new ExistingTrimEditPart(table, trim);
			case Service service -> new ServiceEditPart(table, service);
			case FrameKey frame -> new FrameEditPart(table, frame);
			case StripKey strip -> new StripEditPart(table, strip);
			case LineKey line -> new LineEditPart(table, line);
			case CentreKey centre -> new CentreEditPart(table, centre);
			case RailKey rail -> new RailEditPart(table, rail);
			default -> unknown(model);
		};
	}

	private EditPart unknown(Object model) {
		ILog.get().warn("nothing shows this on a wall: " + model); //$NON-NLS-1$
		return new UnknownEditPart(table, model);
	}
}
