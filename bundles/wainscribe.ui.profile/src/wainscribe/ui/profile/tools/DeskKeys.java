// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile.tools;

import java.util.Objects;

import org.eclipse.gef.GraphicalViewer;
import org.eclipse.gef.KeyHandler;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.KeyEvent;

import wainscribe.model.length.Length;
import wainscribe.profile.section.ArcSegment;
import wainscribe.profile.section.CurveSegment;
import wainscribe.profile.section.StraightSegment;
import wainscribe.ui.profile.actions.SectionSteps;
import wainscribe.ui.profile.desk.DeskZoom;
import wainscribe.ui.profile.desk.ProfileDesk;
import wainscribe.ui.profile.directedit.CoordinateField;
import wainscribe.ui.profile.editparts.NodeEditPart;

/**
 * The keyboard on the desk. Arrows move what is selected by one tape mark, with Ctrl or Shift by ten; Tab goes along the
 * points, Page keys along the segments, H to the handles; Enter types coordinates; Insert puts a point in; L, A and C make
 * lines, arcs and curves, B the back, M mirrors; + and - zoom, 0 fits, 1 is true size.
 */
public final class DeskKeys extends KeyHandler {

	private static final int MANY = 10;

	private final GraphicalViewer viewer;
	private final ProfileDesk desk;
	private final DeskZoom zoom;
	private final PointWalk walk;
	private final SectionSteps steps;

	/** Creates the keyboard of a viewer. */
	public DeskKeys(GraphicalViewer viewer, ProfileDesk desk, DeskZoom zoom, PointWalk walk, SectionSteps steps) {
		this.viewer = Objects.requireNonNull(viewer);
		this.desk = Objects.requireNonNull(desk);
		this.zoom = Objects.requireNonNull(zoom);
		this.walk = Objects.requireNonNull(walk);
		this.steps = Objects.requireNonNull(steps);
	}

	@Override
	public boolean keyPressed(KeyEvent event) {
		int times = (event.stateMask & (SWT.MOD1 | SWT.SHIFT)) != 0 ? MANY : 1;
		Length step = desk.session().units().tapeMark().times(times);
		return switch (event.keyCode) {
			case SWT.ARROW_UP -> steps.nudge(step, Length.ZERO);
			case SWT.ARROW_DOWN -> steps.nudge(step.negated(), Length.ZERO);
			case SWT.ARROW_RIGHT -> steps.nudge(Length.ZERO, step);
			case SWT.ARROW_LEFT -> steps.nudge(Length.ZERO, step.negated());
			case SWT.PAGE_DOWN -> done(() -> walk.alongSegments(1));
			case SWT.PAGE_UP -> done(() -> walk.alongSegments(-1));
			case SWT.INSERT -> done(steps::insertPoint);
			case SWT.CR, SWT.KEYPAD_CR -> type();
			case SWT.ESC -> done(viewer::deselectAll);
			default -> (event.stateMask & (SWT.MOD1 | SWT.ALT)) == 0 ? character(event) : super.keyPressed(event);
		};
	}

	private boolean character(KeyEvent event) {
		return switch (Character.toLowerCase(event.character)) {
			case '+', '=' -> done(zoom::zoomIn);
			case '-' -> done(zoom::zoomOut);
			case '0' -> done(zoom::fit);
			case '1' -> done(zoom::trueSize);
			case 'l' -> when(steps.canTurnTo(StraightSegment.class), steps::turnToLines);
			case 'a' -> when(steps.canTurnTo(ArcSegment.class), steps::turnToArcs);
			case 'c' -> when(steps.canTurnTo(CurveSegment.class), steps::turnToCurves);
			case 'b' -> when(steps.canBeBack(), steps::makeBack);
			case 'm' -> when(steps.isClosed(), steps::mirror);
			case 'h' -> done(walk::alongHandles);
			default -> super.keyPressed(event);
		};
	}

	private boolean type() {
		return viewer.getFocusEditPart() instanceof NodeEditPart node && done(() -> CoordinateField.open(node));
	}

	private static boolean when(boolean possible, Runnable task) {
		if (possible) {
			task.run();
		}
		return possible;
	}

	private static boolean done(Runnable task) {
		task.run();
		return true;
	}
}
