// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile.feedback;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

import org.eclipse.draw2d.IFigure;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.swt.graphics.Color;

import wainscribe.profile.section.SectionPoint;
import wainscribe.ui.drafting.appearance.Appearance;
import wainscribe.ui.drafting.figures.NoteFigure;
import wainscribe.ui.profile.desk.ProfileDesk;
import wainscribe.ui.profile.figures.GuideFigure;
import wainscribe.ui.profile.snapping.GuideLine;
import wainscribe.ui.profile.snapping.PointSnap;

/** What is seen while something is moved: lines it was drawn to, and its numbers beside the pointer. */
public final class MoveFeedback {

	private final ProfileDesk desk;
	private final IFigure layer;
	private final List<GuideFigure> guides = new ArrayList<>();
	private NoteFigure note;

	/**
	 * Creates feedback that is not seen yet.
	 *
	 * @param desk  what is moved on
	 * @param layer takes the figures
	 */
	public MoveFeedback(ProfileDesk desk, IFigure layer) {
		this.desk = Objects.requireNonNull(desk);
		this.layer = Objects.requireNonNull(layer);
	}

	/** Shows where something was drawn to, and what is to be said of it. */
	public void show(PointSnap.Result snapped, List<String> lines) {
		eraseGuides();
		Color colour = Appearance.colour(desk.colours().drawing().accent());
		for (GuideLine line : snapped.lines()) {
			GuideFigure guide = new GuideFigure(pixel(line.through()), pixel(snapped.point()), colour);
			guides.add(guide);
			layer.add(guide);
		}
		if (note == null) {
			note = new NoteFigure(desk.letters(), Appearance.colour(desk.colours().note()),
					Appearance.colour(desk.colours().noteText()));
			layer.add(note);
		}
		note.setLines(lines);
		note.placeBeside(pixel(snapped.point()), DeskNotes.seen(layer));
	}

	/** Removes everything. */
	public void erase() {
		eraseGuides();
		if (note != null) {
			layer.remove(note);
			note = null;
		}
	}

	private void eraseGuides() {
		guides.forEach(layer::remove);
		guides.clear();
	}

	private Point pixel(SectionPoint point) {
		return desk.plane().pixel(point.spot());
	}
}
