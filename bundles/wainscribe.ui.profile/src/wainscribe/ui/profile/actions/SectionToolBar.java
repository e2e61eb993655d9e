// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile.actions;

import java.util.List;
import java.util.Objects;
import java.util.function.BooleanSupplier;

import org.eclipse.gef.GraphicalViewer;
import org.eclipse.jface.action.ActionContributionItem;
import org.eclipse.jface.action.Separator;
import org.eclipse.jface.action.ToolBarManager;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.ToolBar;

import wainscribe.profile.section.ArcSegment;
import wainscribe.profile.section.CurveSegment;
import wainscribe.profile.section.StraightSegment;
import wainscribe.ui.drafting.actions.DropDownAction;
import wainscribe.ui.drafting.actions.SimpleAction;
import wainscribe.ui.drafting.actions.ToolAction;
import wainscribe.ui.drafting.tools.TableEditDomain;
import wainscribe.ui.profile.Messages;
import wainscribe.ui.profile.ProfileIcon;
import wainscribe.ui.profile.backdrop.BackdropMenu;
import wainscribe.ui.profile.desk.DeskZoom;
import wainscribe.ui.profile.desk.ProfileDesk;
import wainscribe.ui.profile.tools.AddPointTool;

/** The tools, what can be done with the selection, and the scale, in a row over the desk. */
public final class SectionToolBar {

	private static final List<Integer> RATIOS = List.of(1, 2, 3, 4, 5, 8, 10, 20);

	private final TableEditDomain domain;
	private final GraphicalViewer viewer;
	private final ProfileDesk desk;
	private final DeskZoom zoom;
	private final SectionSteps steps;

	/** Creates the tool bar of a desk. */
	public SectionToolBar(TableEditDomain domain, GraphicalViewer viewer, ProfileDesk desk, DeskZoom zoom, SectionSteps steps) {
		this.domain = Objects.requireNonNull(domain);
		this.viewer = Objects.requireNonNull(viewer);
		this.desk = Objects.requireNonNull(desk);
		this.zoom = Objects.requireNonNull(zoom);
		this.steps = Objects.requireNonNull(steps);
	}

	/** Creates the control, over a viewer that is there already. */
	public ToolBar createControl(Composite parent, List<SimpleAction> files) {
		ToolBarManager bar = new ToolBarManager(SWT.FLAT | SWT.RIGHT | SWT.HORIZONTAL);
		bar.add(new ArrowAction(domain));
		bar.add(new ToolAction(Messages.SectionToolBar_Draw, ProfileIcon.DRAW.descriptor(), domain,
				() -> new AddPointTool(viewer, desk, steps)));
		bar.add(new Separator());
		bar.add(following(Messages.SectionSteps_Line, ProfileIcon.LINE, steps::turnToLines, () -> steps.canTurnTo(StraightSegment.class)));
		bar.add(following(Messages.SectionSteps_Arc, ProfileIcon.ARC, steps::turnToArcs, () -> steps.canTurnTo(ArcSegment.class)));
		bar.add(following(Messages.SectionSteps_Curve, ProfileIcon.CURVE, steps::turnToCurves, () -> steps.canTurnTo(CurveSegment.class)));
		bar.add(following(Messages.SectionSteps_Back, ProfileIcon.BACK, steps::makeBack, steps::canBeBack));
		bar.add(following(Messages.SectionSteps_Mirror, ProfileIcon.MIRROR, steps::mirror, steps::isClosed));
		bar.add(new Separator());
		bar.add(new DropDownAction(Messages.BackdropMenu_Name, ProfileIcon.BACKDROP.descriptor(),
				menu -> new BackdropMenu(domain, viewer, desk).fill(menu)));
		files.forEach(bar::add);
		bar.add(new Separator());
		bar.add(new SimpleAction(Messages.SectionToolBar_Smaller, ProfileIcon.SMALLER.descriptor(), zoom::zoomOut));
		bar.add(scale());
		bar.add(new SimpleAction(Messages.SectionToolBar_Larger, ProfileIcon.LARGER.descriptor(), zoom::zoomIn));
		bar.add(new SimpleAction(Messages.SectionToolBar_TrueSize, ProfileIcon.TRUE_SIZE.descriptor(), zoom::trueSize));
		bar.add(new SimpleAction(Messages.SectionToolBar_Fit, ProfileIcon.FIT.descriptor(), zoom::fit));
		ToolBar control = bar.createControl(parent);
		control.addListener(SWT.Dispose, event -> bar.dispose());
		return control;
	}

	/** An action that can be used only while the selection allows it. */
	private StepAction following(String text, ProfileIcon icon, Runnable task, BooleanSupplier possible) {
		StepAction action = new StepAction(text, icon, task, possible);
		viewer.addSelectionChangedListener(event -> action.follow());
		desk.addListener(action::follow);
		return action;
	}

	/** The button shows the scale and offers others. */
	private ActionContributionItem scale() {
		DropDownAction scale = new DropDownAction(zoom.text(), null, menu -> RATIOS
				.forEach(times -> menu.add(new SimpleAction(times + ":1", null, () -> zoom.zoomToRatio(times))))); //$NON-NLS-1$
		scale.setToolTipText(Messages.SectionToolBar_Scale);
		zoom.addListener(() -> scale.setText(zoom.text()));
		ActionContributionItem item = new ActionContributionItem(scale);
		item.setMode(ActionContributionItem.MODE_FORCE_TEXT);
		return item;
	}
}
