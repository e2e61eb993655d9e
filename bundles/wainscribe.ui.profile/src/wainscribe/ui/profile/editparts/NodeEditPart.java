// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile.editparts;

import java.util.Objects;

import org.eclipse.gef.AccessibleEditPart;
import org.eclipse.gef.DragTracker;
import org.eclipse.gef.EditPolicy;
import org.eclipse.gef.Request;
import org.eclipse.gef.RequestConstants;
import org.eclipse.gef.editparts.AbstractGraphicalEditPart;
import org.eclipse.swt.accessibility.AccessibleControlEvent;
import org.eclipse.swt.accessibility.AccessibleEvent;

import wainscribe.ui.drafting.appearance.Appearance;
import wainscribe.ui.profile.desk.NodeKey;
import wainscribe.ui.profile.desk.ProfileDesk;
import wainscribe.ui.profile.desk.SectionNodes;
import wainscribe.ui.profile.directedit.CoordinateField;
import wainscribe.ui.profile.figures.NodeFigure;
import wainscribe.ui.profile.policies.DragNodeEditPolicy;
import wainscribe.ui.profile.properties.NodeSheet;
import wainscribe.ui.profile.tools.NodeTracker;
import wainscribe.ui.profile.words.NodeWords;
import wainscribe.ui.properties.SheetSubject;

/** Anything of a section that can be taken hold of: a point, a segment or a handle. */
public abstract class NodeEditPart extends AbstractGraphicalEditPart {

	private final ProfileDesk desk;
	private AccessibleEditPart accessible;

	/**
	 * Creates a part.
	 *
	 * @param desk what it lies on
	 * @param key  what it stands for
	 */
	protected NodeEditPart(ProfileDesk desk, NodeKey key) {
		this.desk = Objects.requireNonNull(desk);
		setModel(key);
	}

	/** Returns the desk. */
	public final ProfileDesk desk() {
		return desk;
	}

	/** Returns what it stands for. */
	public final NodeKey key() {
		return (NodeKey) getModel();
	}

	/** Puts the figure where the node is drawn now. */
	protected abstract void place(SectionNodes nodes);

	@Override
	public NodeFigure getFigure() {
		return (NodeFigure) super.getFigure();
	}

	@Override
	protected void refreshVisuals() {
		getFigure().setColours(Appearance.colour(desk.colours().select()), Appearance.colour(desk.colours().drawing().ground()));
		place(desk.nodes());
	}

	@Override
	protected void createEditPolicies() {
		installEditPolicy(EditPolicy.PRIMARY_DRAG_ROLE, new DragNodeEditPolicy());
	}

	@Override
	public DragTracker getDragTracker(Request request) {
		return new NodeTracker(this);
	}

	/** Clicked twice, its coordinates can be typed. */
	@Override
	public void performRequest(Request request) {
		if (RequestConstants.REQ_OPEN.equals(request.getType())) {
			CoordinateField.open(this);
		}
	}

	@Override
	public Object getAdapter(@SuppressWarnings("rawtypes") Class key) {
		if (key == AccessibleEditPart.class) {
			return getAccessibleEditPart();
		}
		return key == SheetSubject.class ? new NodeSheet(desk.session(), key()) : super.getAdapter(key);
	}

	@Override
	protected AccessibleEditPart getAccessibleEditPart() {
		if (accessible == null) {
			accessible = new AccessibleNode();
		}
		return accessible;
	}

	/** Tells screen readers what is here. */
	private final class AccessibleNode extends AccessibleGraphicalEditPart {

		@Override
		public void getName(AccessibleEvent event) {
			event.result = NodeWords.name(desk.nodes(), key());
		}

		@Override
		public void getDescription(AccessibleEvent event) {
			event.result = NodeWords.value(desk.nodes(), key(), desk.session().units());
		}

		@Override
		public void getValue(AccessibleControlEvent event) {
			event.result = NodeWords.value(desk.nodes(), key(), desk.session().units());
		}
	}
}
