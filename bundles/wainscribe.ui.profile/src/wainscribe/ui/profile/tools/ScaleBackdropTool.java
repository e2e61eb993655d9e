// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile.tools;

import java.util.List;

import org.eclipse.draw2d.IFigure;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.gef.GraphicalViewer;

import wainscribe.model.length.Length;
import wainscribe.profile.section.Spot;
import wainscribe.ui.drafting.appearance.Appearance;
import wainscribe.ui.drafting.figures.NoteFigure;
import wainscribe.ui.profile.Messages;
import wainscribe.ui.profile.desk.ProfileDesk;
import wainscribe.ui.profile.directedit.DistanceField;
import wainscribe.ui.profile.feedback.DeskNotes;
import wainscribe.ui.profile.figures.GuideFigure;

/** Gives the backdrop its scale: two points of the picture are clicked, and what is really between them is typed. */
public final class ScaleBackdropTool extends DeskTool {

	private static final int APART = 4;

	private NoteFigure note;
	private GuideFigure line;
	private Spot first;

	/** Creates the tool of a desk. */
	public ScaleBackdropTool(GraphicalViewer viewer, ProfileDesk desk) {
		super(viewer, desk);
	}

	@Override
	protected boolean handleButtonUp(int button) {
		if (button != 1) {
			return true;
		}
		Spot spot = desk().plane().spot(onDesk(getLocation()));
		if (first == null) {
			first = spot;
			say(Messages.ScaleBackdropTool_Second);
		} else if (desk().plane().pixel(first).getDistance(desk().plane().pixel(spot)) >= APART) {
			ask(first, spot);
		}
		return true;
	}

	@Override
	protected boolean handleMove() {
		say(first == null ? Messages.ScaleBackdropTool_First : Messages.ScaleBackdropTool_Second);
		return true;
	}

	@Override
	public void deactivate() {
		erase();
		super.deactivate();
	}

	private void ask(Spot from, Spot to) {
		Point place = getLocation().getCopy();
		getDomain().loadDefaultTool();
		DistanceField.open(viewer(), desk(), place, real -> scale(from, to, real));
	}

	private void scale(Spot from, Spot to, Length real) {
		desk().session().backdrop().ifPresent(now -> desk().session().execute(desk().session()
				.laying(Messages.ScaleBackdropTool_Label, now.scaled(from, to, real.approximateMillimetres()))));
	}

	private void say(String words) {
		erase();
		Point at = onDesk(getLocation());
		IFigure layer = feedbackLayer();
		if (first != null) {
			line = new GuideFigure(desk().plane().pixel(first), at, Appearance.colour(desk().colours().guide()));
			layer.add(line);
		}
		note = new NoteFigure(desk().letters(), Appearance.colour(desk().colours().note()), Appearance.colour(desk().colours().noteText()));
		layer.add(note);
		note.setLines(List.of(words));
		note.placeBeside(at, DeskNotes.seen(layer));
	}

	private void erase() {
		if (note != null) {
			note.getParent().remove(note);
			note = null;
		}
		if (line != null) {
			line.getParent().remove(line);
			line = null;
		}
	}
}
