// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.session;

/** Is told what happens to an open room, always in the user interface thread. */
public interface RoomSessionListener {

	/** The model changed and {@link RoomSession#design()} is up to date again. */
	default void designChanged(RoomSession session) {
		// of no interest to most
	}

	/** The room was checked again: {@link RoomSession#findings()} may differ. Comes a moment after the last edit. */
	default void findingsChanged(RoomSession session) {
		// of no interest to most
	}

	/** What can be undone or redone, or whether there is something to save, may differ. */
	default void historyChanged(RoomSession session) {
		// of no interest to most
	}

	/** {@link RoomSession#room()} is another object, read from its file; everything that shows the old one starts anew. */
	default void roomReplaced(RoomSession session) {
		// of no interest to most
	}
}
