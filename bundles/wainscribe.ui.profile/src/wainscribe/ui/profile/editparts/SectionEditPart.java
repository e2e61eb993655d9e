// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile.editparts;

import java.util.List;
import java.util.Objects;

import org.eclipse.draw2d.IFigure;
import org.eclipse.gef.AccessibleEditPart;
import org.eclipse.gef.DragTracker;
import org.eclipse.gef.EditPolicy;
import org.eclipse.gef.LayerConstants;
import org.eclipse.gef.Request;
import org.eclipse.gef.editparts.AbstractGraphicalEditPart;
import org.eclipse.gef.editpolicies.RootComponentEditPolicy;
import org.eclipse.gef.tools.MarqueeDragTracker;
import org.eclipse.jface.viewers.ISelectionChangedListener;
import org.eclipse.swt.accessibility.AccessibleControlEvent;
import org.eclipse.swt.accessibility.AccessibleEvent;

import wainscribe.ui.profile.desk.DeskListener;
import wainscribe.ui.profile.desk.NodeKey;
import wainscribe.ui.profile.desk.ProfileDesk;
import wainscribe.ui.profile.feedback.FaultMark;
import wainscribe.ui.profile.figures.DeskFigure;
import wainscribe.ui.profile.words.SectionNumbers;

/** The section on its desk. Hears from the desk and tells its points, segments and handles. */
public final class SectionEditPart extends AbstractGraphicalEditPart implements DeskListener {

	private final ProfileDesk desk;
	private final BackdropImage images = new BackdropImage();
	private final ISelectionChangedListener selection = event -> followNodes();
	private FaultMark fault;
	private AccessibleEditPart accessible;

	/** Creates the part of a desk. */
	public SectionEditPart(ProfileDesk desk) {
		this.desk = Objects.requireNonNull(desk);
		setModel(desk.session());
	}

	/** Returns the desk. */
	public ProfileDesk desk() {
		return desk;
	}

	@Override
	public void activate() {
		if (!isActive()) {
			super.activate();
			fault = new FaultMark(desk, getLayer(LayerConstants.FEEDBACK_LAYER));
			desk.addListener(this);
			getViewer().addSelectionChangedListener(selection);
			deskChanged();
		}
	}

	@Override
	public void deactivate() {
		if (isActive()) {
			getViewer().removeSelectionChangedListener(selection);
			desk.removeListener(this);
			fault.erase();
			images.dispose();
			super.deactivate();
		}
	}

	@Override
	public void deskChanged() {
		refreshChildren();
		followNodes();
		refreshVisuals();
		fault.show();
	}

	private void followNodes() {
		for (Object child : getChildren()) {
			((NodeEditPart) child).refresh();
		}
	}

	@Override
	protected List<NodeKey> getModelChildren() {
		return desk.nodes().all();
	}

	@Override
	protected IFigure createFigure() {
		return new DeskFigure(desk::area);
	}

	@Override
	protected void refreshVisuals() {
		((DeskFigure) getFigure()).show(DeskView.of(desk), images.of(desk), desk.colours());
	}

	/** The section can't be removed from its own desk. */
	@Override
	protected void createEditPolicies() {
		installEditPolicy(EditPolicy.COMPONENT_ROLE, new RootComponentEditPolicy());
	}

	/** Beside the section a frame is drawn round points; a click there selects the profile. */
	@Override
	public DragTracker getDragTracker(Request request) {
		return new MarqueeDragTracker();
	}

	@Override
	protected AccessibleEditPart getAccessibleEditPart() {
		if (accessible == null) {
			accessible = new AccessibleSection();
		}
		return accessible;
	}

	/** Tells screen readers what is drawn. */
	private final class AccessibleSection extends AccessibleGraphicalEditPart {

		@Override
		public void getName(AccessibleEvent event) {
			event.result = desk.session().draft().data().name();
		}

		@Override
		public void getValue(AccessibleControlEvent event) {
			event.result = SectionNumbers.sentence(desk.session());
		}
	}
}
