// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.editparts;

import java.util.Optional;

import org.eclipse.gef.EditPolicy;
import org.eclipse.osgi.util.NLS;

import wainscribe.layout.RailBand;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.model.length.LengthFormat;
import wainscribe.model.outline.Outline;
import wainscribe.model.outline.WallShape;
import wainscribe.ui.elevation.Messages;
import wainscribe.ui.elevation.policies.RailEditPolicy;
import wainscribe.ui.elevation.table.DrawingTable;
import wainscribe.ui.elevation.table.RailKey;

/** The rail of the room along one wall: derived from the brief. */
public final class RailEditPart extends ThingEditPart {

	/** What findings call the rail. */
	public static final String WORD = "rail"; //$NON-NLS-1$

	/** Creates the part. */
	public RailEditPart(DrawingTable table, RailKey key) {
		super(table, key);
	}

	/** Returns which wall's stretch of rail it is. */
	@Override
	public RailKey getModel() {
		return (RailKey) super.getModel();
	}

	/** Returns the rail as shown now; empty when the shown design has none. */
	public Optional<RailBand> rail() {
		return table().design().layout().rail();
	}

	@Override
	public Wall wall() {
		return getModel().wall();
	}

	/** On stairs the rail climbs: then the outline is what it covers. */
	@Override
	public Optional<Outline> outline() {
		WallShape shape = WallShape.of(wall());
		Length low = shape.floorRight().min(Length.ZERO);
		Length high = shape.floorRight().max(Length.ZERO);
		return rail().map(rail -> new Outline(Length.ZERO, rail.bottom().plus(low), shape.length(), rail.top().plus(high)));
	}

	@Override
	public String name() {
		return Messages.RailEditPart_Name;
	}

	@Override
	public String value() {
		return rail().map(rail -> NLS.bind(Messages.RailEditPart_Value,
				LengthFormat.asShown(rail.bottom(), table().units()), LengthFormat.asShown(rail.top(), table().units())))
				.orElse(""); //$NON-NLS-1$
	}

	@Override
	public boolean isCalled(String word) {
		return WORD.equals(word);
	}

	@Override
	protected Object adapted() {
		return rail().<Object>map(rail -> rail).orElse(getModel());
	}

	/** It is dragged up and down, for the whole room. */
	@Override
	protected void createEditPolicies() {
		super.createEditPolicies();
		installEditPolicy(EditPolicy.PRIMARY_DRAG_ROLE, new RailEditPolicy());
	}
}
