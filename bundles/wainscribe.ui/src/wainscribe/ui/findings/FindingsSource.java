// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.findings;

import static java.util.Objects.requireNonNull;

import java.util.List;
import java.util.Optional;

import wainscribe.rules.Finding;
import wainscribe.ui.session.HomeSession;
import wainscribe.ui.session.RoomSession;
import wainscribe.ui.session.RoomSessionListener;

/** The findings of one room or of all rooms of a home, and the news when they change. */
final class FindingsSource implements RoomSessionListener {

	private final Runnable changed;
	private List<RoomSession> rooms = List.of();

	/**
	 * Creates a source without rooms.
	 *
	 * @param changed told when findings changed
	 */
	FindingsSource(Runnable changed) {
		this.changed = requireNonNull(changed);
	}

	/** Follows other rooms. */
	void follow(List<RoomSession> others) {
		rooms.forEach(room -> room.removeListener(this));
		rooms = List.copyOf(others);
		rooms.forEach(room -> room.addListener(this));
	}

	/** Returns the rooms that are followed. */
	List<RoomSession> rooms() {
		return rooms;
	}

	/** Tells whether all rooms were checked. */
	boolean isChecked() {
		return rooms.stream().allMatch(RoomSession::isChecked);
	}

	/** Returns all findings with the rooms they belong to. */
	List<RoomFinding> findings() {
		return rooms.stream().flatMap(room -> room.findings().stream().map(finding -> new RoomFinding(room, finding))).toList();
	}

	/** Returns the home of the rooms. */
	Optional<HomeSession> home() {
		return rooms.stream().findFirst().map(RoomSession::homeSession);
	}

	@Override
	public void findingsChanged(RoomSession session) {
		changed.run();
	}

	/**
	 * A finding and the room it was made in.
	 *
	 * @param room    the room
	 * @param finding the finding
	 */
	record RoomFinding(RoomSession room, Finding finding) {

		/** Tells whether two are about the same thing, before and after an edit. */
		boolean isSame(RoomFinding other) {
			return room == other.room && finding.key().equals(other.finding.key());
		}
	}
}
