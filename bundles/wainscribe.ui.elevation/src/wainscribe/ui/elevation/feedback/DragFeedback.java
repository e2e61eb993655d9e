// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.feedback;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.eclipse.draw2d.IFigure;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Display;

import wainscribe.layout.RoomDesign;
import wainscribe.ui.drafting.appearance.Appearance;
import wainscribe.ui.drafting.figures.NoteFigure;
import wainscribe.ui.elevation.Messages;
import wainscribe.ui.elevation.figures.GuideFigure;
import wainscribe.ui.elevation.figures.RubberOutline;
import wainscribe.ui.elevation.snapping.SnapLine;
import wainscribe.ui.elevation.table.DrawingTable;
import wainscribe.ui.elevation.table.Projection;

/**
 * What is laid over the drawing while something is dragged: the outline where it would be, the lines it was drawn to, and a
 * note beside the pointer. The walls themselves show what the room would become; that is worked out as soon as no further
 * movement of the pointer is waiting, so that the pointer never lags behind.
 */
public final class DragFeedback {

	private final DrawingTable table;
	private final IFigure layer;
	private final boolean leads;
	private final RubberOutline outline;
	private final GuideFigure plumb;
	private final GuideFigure level;
	private final NoteFigure note;
	private Proposal waiting;
	private boolean scheduled;
	private boolean erased;

	/**
	 * Creates feedback that shows nothing yet.
	 *
	 * @param table the drawing table
	 * @param layer the layer over the drawing
	 * @param leads whether this is the thing whose effect on the room is shown; of several dragged together one leads
	 */
	public DragFeedback(DrawingTable table, IFigure layer, boolean leads) {
		this.table = table;
		this.layer = layer;
		this.leads = leads;
		outline = new RubberOutline(Appearance.colour(table.colours().select()));
		plumb = new GuideFigure(Appearance.colour(table.colours().guide()));
		level = new GuideFigure(Appearance.colour(table.colours().guide()));
		note = new NoteFigure(table.letters(), Appearance.colour(table.colours().note()),
				Appearance.colour(table.colours().noteText()));
	}

	/**
	 * Shows a proposal.
	 *
	 * @param proposal what would be done; empty when nothing would
	 * @param pointer  where the pointer is on the screen, null when it is not what drags
	 */
	public void show(Optional<Proposal> proposal, Point pointer) {
		if (proposal.isEmpty()) {
			return;
		}
		Projection place = table.placeOf(proposal.get().wall());
		attach(outline);
		outline.setBounds(place.pixels(proposal.get().outline()).expand(1, 1));
		Rectangle strip = visible();
		guide(plumb, proposal.get().plumb() == null ? null
				: new Rectangle(place.x(proposal.get().plumb().at()), strip.y, 1, strip.height));
		guide(level, proposal.get().level() == null ? null
				: new Rectangle(strip.x, place.y(proposal.get().level().at()), strip.width, 1));
		if (leads) {
			attach(note);
			note.placeBeside(pointer == null ? place.pixels(proposal.get().outline()).getTopRight() : onLayer(pointer), strip);
			waiting = proposal.get();
			schedule();
		}
	}

	/** Takes everything away and shows the room as it is. */
	public void erase() {
		erased = true;
		waiting = null;
		for (IFigure figure : new IFigure[] { outline, plumb, level, note }) {
			if (figure.getParent() == layer) {
				layer.remove(figure);
			}
		}
		if (leads) {
			table.endTrial();
		}
	}

	private void schedule() {
		if (!scheduled) {
			scheduled = true;
			Display.getCurrent().asyncExec(this::tryOut);
		}
	}

	private void tryOut() {
		scheduled = false;
		Proposal proposal = waiting;
		waiting = null;
		if (erased || proposal == null) {
			return;
		}
		if (proposal.command().canExecute()) {
			table.tryOut(proposal.command(), design -> note.setLines(lines(proposal, design)));
		} else {
			table.endTrial();
			note.setLines(lines(proposal, table.design()));
		}
		note.stay(visible());
	}

	private static List<String> lines(Proposal proposal, RoomDesign design) {
		List<String> lines = new ArrayList<>(proposal.note().apply(design));
		String met = Stream.of(proposal.plumb(), proposal.level()).filter(Objects::nonNull).map(SnapLine::name)
				.filter(name -> !name.isEmpty()).distinct().collect(Collectors.joining(", ")); //$NON-NLS-1$
		if (!met.isEmpty()) {
			lines.add(1, NLS.bind(Messages.DragFeedback_InLineWith, met));
		}
		return lines;
	}

	private void guide(GuideFigure figure, Rectangle line) {
		figure.setVisible(line != null);
		if (line != null) {
			attach(figure);
			figure.setBounds(line);
		}
	}

	private void attach(IFigure figure) {
		if (figure.getParent() == null) {
			layer.add(figure);
		}
	}

	private Point onLayer(Point pointer) {
		Point point = pointer.getCopy();
		layer.translateToRelative(point);
		return point;
	}

	private Rectangle visible() {
		IFigure viewport = layer;
		while (viewport.getParent() != null && !(viewport instanceof org.eclipse.draw2d.Viewport)) {
			viewport = viewport.getParent();
		}
		Rectangle area = viewport.getClientArea(new Rectangle());
		viewport.translateToAbsolute(area);
		layer.translateToRelative(area);
		return area;
	}
}
