// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.editparts;

import java.util.Optional;

import org.eclipse.gef.EditPolicy;

import wainscribe.layout.StripOutline;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.model.outline.Outline;
import wainscribe.ui.elevation.policies.SelectOnlyEditPolicy;
import wainscribe.ui.elevation.table.DrawingTable;
import wainscribe.ui.elevation.table.StripKey;
import wainscribe.ui.elevation.words.StripText;

/** A batten or board. Its place follows from the room: it can be selected and read, not dragged. */
public final class StripEditPart extends ThingEditPart {

	/** Creates the part. */
	public StripEditPart(DrawingTable table, StripKey key) {
		super(table, key);
	}

	/** Returns which strip it is. */
	@Override
	public StripKey getModel() {
		return (StripKey) super.getModel();
	}

	/** Returns the strip as shown now; empty when the shown design has fewer. */
	public Optional<StripOutline> strip() {
		return getModel().in(table().design());
	}

	@Override
	public Wall wall() {
		return getModel().wall();
	}

	@Override
	public Optional<Outline> outline() {
		return strip().map(strip -> new Outline(strip.x(), strip.y().plus(strip.rise().min(Length.ZERO)), strip.right(),
				strip.top().plus(strip.riseTop().max(Length.ZERO))));
	}

	@Override
	public String name() {
		return strip().map(StripText::name).orElse(""); //$NON-NLS-1$
	}

	@Override
	public String value() {
		return strip().map(strip -> StripText.value(strip, table().units())).orElse(""); //$NON-NLS-1$
	}

	@Override
	public boolean isCalled(String word) {
		return strip().map(strip -> strip.id().equals(word)).orElse(false);
	}

	@Override
	protected Object adapted() {
		return strip().<Object>map(strip -> strip).orElse(getModel());
	}

	@Override
	protected void createEditPolicies() {
		super.createEditPolicies();
		installEditPolicy(EditPolicy.PRIMARY_DRAG_ROLE, new SelectOnlyEditPolicy());
	}
}
