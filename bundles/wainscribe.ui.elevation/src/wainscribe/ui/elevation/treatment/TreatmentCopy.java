// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.treatment;

import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.function.Predicate;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.CoreException;

import wainscribe.commands.CopyTreatmentCommand;
import wainscribe.commands.TreatmentPart;
import wainscribe.model.Room;
import wainscribe.ui.session.HomeSessions;
import wainscribe.ui.session.RoomSession;

/** Copies decisions of a room to other rooms. A room that nobody has open is written at once: nobody else would. */
public final class TreatmentCopy {

	private final HomeSessions sessions;
	private final Predicate<IFile> open;

	/**
	 * Creates a copy.
	 *
	 * @param sessions hands out the rooms
	 * @param open     tells whether a room's file is open in an editor, in which the designer will save it
	 */
	public TreatmentCopy(HomeSessions sessions, Predicate<IFile> open) {
		this.sessions = Objects.requireNonNull(sessions);
		this.open = Objects.requireNonNull(open);
	}

	/**
	 * Copies.
	 *
	 * @param source  the room whose decisions are copied
	 * @param targets the rooms that get them; each gets one step in its own history, none if nothing changes
	 * @param parts   which decisions
	 * @throws CoreException if a room cannot be read or written
	 */
	public void run(Room source, List<RoomSession> targets, Set<TreatmentPart> parts) throws CoreException {
		for (RoomSession target : targets) {
			RoomSession used = sessions.openRoom(target.file());
			try {
				copy(source, used, parts);
			} finally {
				sessions.close(used);
			}
		}
	}

	private void copy(Room source, RoomSession target, Set<TreatmentPart> parts) throws CoreException {
		CopyTreatmentCommand command = new CopyTreatmentCommand(source, target.room(), parts);
		if (command.canExecute()) {
			target.commandStack().execute(command);
			if (!open.test(target.file())) {
				target.save(null);
			}
		}
	}
}
