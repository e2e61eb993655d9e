// SPDX-License-Identifier: EPL-2.0
package wainscribe.commands;

import org.eclipse.emf.ecore.util.EcoreUtil;

import wainscribe.model.Brief;
import wainscribe.model.Room;
import wainscribe.model.WainscribeFactory;
import wainscribe.model.WainscribePackage;

/** The brief that belongs to a room alone. */
final class RoomBrief {

	private RoomBrief() {
	}

	/** Returns the room's own brief, making an empty one as part of the step if there is none. */
	static Brief ensure(Room room, ChangeLog changes) {
		if (room.getBrief() == null) {
			Brief brief = WainscribeFactory.eINSTANCE.createBrief();
			brief.setId(EcoreUtil.generateUUID());
			changes.set(room, WainscribePackage.Literals.ROOM__BRIEF, brief);
		}
		return room.getBrief();
	}
}
