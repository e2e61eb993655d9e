// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile.actions;

import java.util.Objects;

import org.eclipse.gef.ContextMenuProvider;
import org.eclipse.gef.EditPartViewer;
import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.IMenuManager;
import org.eclipse.jface.action.Separator;

import wainscribe.profile.section.ArcSegment;
import wainscribe.profile.section.CurveSegment;
import wainscribe.profile.section.StraightSegment;
import wainscribe.ui.drafting.actions.SimpleAction;
import wainscribe.ui.profile.Messages;
import wainscribe.ui.profile.ProfileIcon;
import wainscribe.ui.profile.desk.DeskZoom;
import wainscribe.ui.profile.directedit.CoordinateField;
import wainscribe.ui.profile.editparts.NodeEditPart;

/** What can be done with what is under the pointer, each with its key. Holds only what can be done now. */
public final class SectionContextMenu extends ContextMenuProvider {

	private final SectionSteps steps;
	private final DeskZoom zoom;

	/** Creates the menu of a viewer. */
	public SectionContextMenu(EditPartViewer viewer, SectionSteps steps, DeskZoom zoom) {
		super(viewer);
		this.steps = Objects.requireNonNull(steps);
		this.zoom = Objects.requireNonNull(zoom);
	}

	@Override
	public void buildContextMenu(IMenuManager menu) {
		if (getViewer().getFocusEditPart() instanceof NodeEditPart node) {
			add(menu, true, Messages.SectionContextMenu_Type, "Enter", null, () -> CoordinateField.open(node)); //$NON-NLS-1$
		}
		boolean segments = !steps.segments().isEmpty();
		add(menu, segments || !steps.points().isEmpty(), Messages.SectionSteps_Insert, "Insert", null, steps::insertPoint); //$NON-NLS-1$
		menu.add(new Separator());
		add(menu, steps.canTurnTo(StraightSegment.class), Messages.SectionSteps_Line, "L", ProfileIcon.LINE, steps::turnToLines); //$NON-NLS-1$
		add(menu, steps.canTurnTo(ArcSegment.class), Messages.SectionSteps_Arc, "A", ProfileIcon.ARC, steps::turnToArcs); //$NON-NLS-1$
		add(menu, steps.canTurnTo(CurveSegment.class), Messages.SectionSteps_Curve, "C", ProfileIcon.CURVE, steps::turnToCurves); //$NON-NLS-1$
		add(menu, steps.canBeBack(), Messages.SectionSteps_Back, "B", ProfileIcon.BACK, steps::makeBack); //$NON-NLS-1$
		menu.add(new Separator());
		add(menu, steps.canDelete(), Messages.SectionSteps_Delete, "Delete", null, steps::delete); //$NON-NLS-1$
		menu.add(new Separator());
		add(menu, steps.canClose(), Messages.SectionSteps_Close, "", null, steps::close); //$NON-NLS-1$
		add(menu, steps.isClosed(), Messages.SectionSteps_Mirror, "M", ProfileIcon.MIRROR, steps::mirror); //$NON-NLS-1$
		add(menu, steps.isClosed(), Messages.SectionSteps_Clear, "", null, steps::clear); //$NON-NLS-1$
		menu.add(new Separator());
		add(menu, true, Messages.SectionToolBar_Fit, "0", ProfileIcon.FIT, zoom::fit); //$NON-NLS-1$
		add(menu, true, Messages.SectionToolBar_TrueSize, "1", ProfileIcon.TRUE_SIZE, zoom::trueSize); //$NON-NLS-1$
	}

	/** The key behind a tab is shown only: the keyboard of the desk does the work. */
	private static void add(IMenuManager menu, boolean possible, String text, String key, ProfileIcon icon, Runnable task) {
		if (possible) {
			Action action = new SimpleAction(key.isEmpty() ? text : text + '\t' + key, icon == null ? null : icon.descriptor(), task);
			menu.add(action);
		}
	}
}
