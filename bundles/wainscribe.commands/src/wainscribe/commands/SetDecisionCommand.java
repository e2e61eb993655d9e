// SPDX-License-Identifier: EPL-2.0
package wainscribe.commands;

import java.util.Objects;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.osgi.util.NLS;

import wainscribe.model.Brief;
import wainscribe.model.Room;

/**
 * Decides one thing for a room. A room without a brief of its own gets one that holds only this; all else stays with the
 * home.
 */
public class SetDecisionCommand extends EditCommand {

	private final Room room;
	private final EAttribute feature;
	private final Object value;

	/**
	 * Creates a command.
	 *
	 * @param room         the room
	 * @param feature      an attribute of the brief
	 * @param value        the decision, a list for a many-valued one; null lets the home or the layout decide again
	 * @param featureLabel what the property sheet calls the decision; the step is called after it
	 */
	public SetDecisionCommand(Room room, EAttribute feature, Object value, String featureLabel) {
		this(NLS.bind(Messages.SetFeatureCommand_Label, Objects.requireNonNull(featureLabel)), room, feature, value);
	}

	/**
	 * Creates a command with its own name.
	 *
	 * @param label   the name of the step
	 * @param room    the room
	 * @param feature an attribute of the brief
	 * @param value   the decision, null to take it back
	 */
	protected SetDecisionCommand(String label, Room room, EAttribute feature, Object value) {
		super(label, room);
		this.room = room;
		this.feature = Objects.requireNonNull(feature);
		this.value = value;
	}

	@Override
	protected boolean isEffective() {
		Brief brief = room.getBrief();
		Object now = brief != null && brief.eIsSet(feature) ? brief.eGet(feature) : null;
		return !Objects.equals(now, value);
	}

	@Override
	protected void perform(ChangeLog changes) {
		changes.set(RoomBrief.ensure(room, changes), feature, value);
	}
}
