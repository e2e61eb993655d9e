// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.tools;

import java.util.List;
import java.util.Optional;

import org.eclipse.draw2d.Cursors;
import org.eclipse.draw2d.IFigure;
import org.eclipse.draw2d.Polyline;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.gef.EditPart;
import org.eclipse.gef.EditPartViewer;
import org.eclipse.gef.LayerConstants;
import org.eclipse.gef.editparts.LayerManager;
import org.eclipse.gef.tools.AbstractTool;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.KeyEvent;

import wainscribe.model.length.Length;
import wainscribe.model.length.LengthFormat;
import wainscribe.ui.drafting.appearance.Appearance;
import wainscribe.ui.drafting.figures.NoteFigure;
import wainscribe.ui.elevation.Messages;
import wainscribe.ui.elevation.editparts.ThingEditPart;
import wainscribe.ui.elevation.editparts.WallEditPart;
import wainscribe.ui.elevation.snapping.Snap;
import wainscribe.ui.elevation.snapping.SnapLine;
import wainscribe.ui.elevation.snapping.SnapLines;
import wainscribe.ui.elevation.snapping.TableLines;
import wainscribe.ui.elevation.table.DrawingTable;
import wainscribe.ui.elevation.table.Projection;

/** Measures between two points of a wall: along, up, and straight. Ends are drawn to edges. Changes nothing. */
public final class MeasureTool extends AbstractTool {

	private static final int REACH = 8;
	private static final int LINE = 2;

	private WallEditPart wall;
	private SnapLines lines;
	private Length startX;
	private Length startY;
	private Polyline line;
	private NoteFigure note;

	/** Creates the tool. */
	public MeasureTool() {
		setDefaultCursor(Cursors.CROSS);
	}

	@Override
	protected String getCommandName() {
		return "wainscribe.measure"; //$NON-NLS-1$
	}

	@Override
	protected boolean handleButtonDown(int button) {
		clear();
		Optional<WallEditPart> under = button == 1 ? wallAt() : Optional.empty();
		if (under.isPresent()) {
			wall = under.get();
			lines = TableLines.of(table(), wall.getModel(), null);
			startX = drawn(place().xAt(at().x), lines.plumb());
			startY = drawn(place().yAt(at().y), lines.level());
			show();
		}
		return true;
	}

	@Override
	protected boolean handleDrag() {
		if (wall != null) {
			measure();
		}
		return true;
	}

	@Override
	protected boolean handleButtonUp(int button) {
		wall = null;
		return true;
	}

	@Override
	public void deactivate() {
		clear();
		super.deactivate();
	}

	private void measure() {
		Length x = drawn(place().xAt(at().x), lines.plumb());
		Length y = drawn(place().yAt(at().y), lines.level());
		line.setStart(new Point(place().x(startX), place().y(startY)));
		line.setEnd(new Point(place().x(x), place().y(y)));
		Length along = x.minus(startX).abs();
		Length up = y.minus(startY).abs();
		// floating point serves for what is only shown
		double straight = Math.hypot(along.approximateMillimetres(), up.approximateMillimetres());
		Length diagonal = new Length(Math.round(straight * Length.UNITS_PER_MILLIMETRE));
		note.setLines(List.of(NLS.bind(Messages.MeasureTool_AlongUp, text(along), text(up)),
				NLS.bind(Messages.MeasureTool_Straight, LengthFormat.asTapeMark(diagonal, table().units()))));
		Rectangle area = layer().getBounds().getCopy();
		note.placeBeside(line.getEnd(), area);
	}

	private void show() {
		line = new Polyline();
		line.setLineWidth(LINE);
		line.setForegroundColor(Appearance.colour(table().colours().guide()));
		line.addPoint(at());
		line.addPoint(at());
		note = new NoteFigure(table().letters(), Appearance.colour(table().colours().note()),
				Appearance.colour(table().colours().noteText()));
		layer().add(line);
		layer().add(note);
		measure();
	}

	private void clear() {
		for (IFigure figure : new IFigure[] { line, note }) {
			if (figure != null && figure.getParent() != null) {
				figure.getParent().remove(figure);
			}
		}
		wall = null;
	}

	private Length drawn(Length at, List<SnapLine> near) {
		return Snap.nearest(List.of(at), near, place().length(REACH)).map(snap -> at.plus(snap.correction()))
				.orElseGet(() -> at.roundedTo(table().units().tapeMark()));
	}

	private String text(Length length) {
		return LengthFormat.asShown(length, table().units());
	}

	private Point at() {
		Point point = getLocation().getCopy();
		wall.getFigure().translateToRelative(point);
		return point;
	}

	private Projection place() {
		return table().placeOf(wall.getModel());
	}

	private DrawingTable table() {
		return wall.table();
	}

	private IFigure layer() {
		return LayerManager.Helper.find(wall).getLayer(LayerConstants.FEEDBACK_LAYER);
	}

	private Optional<WallEditPart> wallAt() {
		EditPartViewer viewer = getCurrentViewer();
		EditPart part = viewer == null ? null : viewer.findObjectAt(getLocation());
		return switch (part) {
			case ThingEditPart thing -> Optional.of((WallEditPart) thing.getParent());
			case WallEditPart found -> Optional.of(found);
			case null, default -> Optional.empty();
		};
	}

	@Override
	protected boolean handleKeyDown(KeyEvent event) {
		if (event.keyCode == SWT.ESC) {
			getDomain().loadDefaultTool();
			return true;
		}
		return super.handleKeyDown(event);
	}
}
