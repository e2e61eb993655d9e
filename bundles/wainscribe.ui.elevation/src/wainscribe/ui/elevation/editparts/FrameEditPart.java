// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.editparts;

import java.util.Optional;

import org.eclipse.gef.EditPolicy;

import wainscribe.layout.FrameOutline;
import wainscribe.layout.FrameRole;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.model.outline.Outline;
import wainscribe.ui.drafting.appearance.Appearance;
import wainscribe.ui.elevation.policies.FrameEditPolicy;
import wainscribe.ui.elevation.policies.FrameLockEditPolicy;
import wainscribe.ui.elevation.policies.RemoveFrameEditPolicy;
import wainscribe.ui.elevation.table.DrawingTable;
import wainscribe.ui.elevation.table.FrameKey;
import wainscribe.ui.elevation.words.FrameText;

/** A frame: derived, or placed by hand. */
public final class FrameEditPart extends ThingEditPart {

	/** Creates the part. */
	public FrameEditPart(DrawingTable table, FrameKey key) {
		super(table, key);
	}

	/** Returns which frame it is. */
	@Override
	public FrameKey getModel() {
		return (FrameKey) super.getModel();
	}

	/** Returns the frame as shown now; empty when the shown design has fewer. */
	public Optional<FrameOutline> frame() {
		return getModel().in(table().design());
	}

	@Override
	public Wall wall() {
		return getModel().wall();
	}

	@Override
	public Optional<Outline> outline() {
		return frame().map(frame -> {
			Length low = frame.y().plus(frame.rise().min(Length.ZERO));
			Length high = frame.top().plus(frame.riseTop().max(Length.ZERO));
			return new Outline(frame.x(), low, frame.right(), high);
		});
	}

	@Override
	public String name() {
		return frame().map(FrameText::name).orElse(""); //$NON-NLS-1$
	}

	@Override
	public String value() {
		return frame().map(frame -> FrameText.value(frame, table().units())).orElse(""); //$NON-NLS-1$
	}

	@Override
	public boolean isCalled(String word) {
		return frame().map(frame -> frame.id().equals(word)).orElse(false);
	}

	/** A frame placed by hand shows a padlock. */
	@Override
	protected void refreshVisuals() {
		super.refreshVisuals();
		boolean locked = frame().map(frame -> frame.role() == FrameRole.PLACED).orElse(false);
		getFigure().setLock(locked ? Appearance.colour(table().colours().drawing().note()) : null);
	}

	@Override
	protected Object adapted() {
		return frame().<Object>map(frame -> frame).orElse(getModel());
	}

	/** Dragging places and locks its tier; it can be locked where it is, given back to the room, and taken away. */
	@Override
	protected void createEditPolicies() {
		super.createEditPolicies();
		installEditPolicy(EditPolicy.PRIMARY_DRAG_ROLE, new FrameEditPolicy());
		installEditPolicy(FrameLockEditPolicy.ROLE, new FrameLockEditPolicy());
		installEditPolicy(EditPolicy.COMPONENT_ROLE, new RemoveFrameEditPolicy());
	}
}
