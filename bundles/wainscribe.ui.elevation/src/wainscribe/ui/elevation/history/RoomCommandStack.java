// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.history;

import wainscribe.ui.drafting.history.ModelCommandStack;
import wainscribe.ui.session.RoomSession;
import wainscribe.ui.session.RoomSessionListener;

/** Shows the one undo history of a room to GEF. */
public final class RoomCommandStack extends ModelCommandStack implements RoomSessionListener {

	private final RoomSession session;

	/**
	 * Creates the view of a history; {@link #dispose()} ends it.
	 *
	 * @param session the room
	 */
	public RoomCommandStack(RoomSession session) {
		super(session::commandStack, session::isDirty);
		this.session = session;
		session.addListener(this);
	}

	@Override
	public void dispose() {
		session.removeListener(this);
	}

	@Override
	public void historyChanged(RoomSession other) {
		changed();
	}
}
