// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.session;

import java.util.List;
import java.util.Optional;

import org.eclipse.core.resources.IProject;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.emf.common.command.CommandStack;

import wainscribe.layout.EffectiveBrief;
import wainscribe.layout.RoomDesigner;
import wainscribe.model.Home;
import wainscribe.model.Room;
import wainscribe.model.length.LengthUnit;
import wainscribe.profile.ProfileCatalogue;

/** An open home: a project of the workspace, its rooms, and what was decided for all of them. */
public interface HomeSession {

	/** Returns the project that the home's files lie in. */
	IProject project();

	/** Returns the home. Another object after {@link #reload(IProgressMonitor)}. */
	Home home();

	/** Returns the unit in which the home is measured and drawn. */
	LengthUnit units();

	/** Returns the decisions that hold in a room of the home that decides nothing itself. */
	EffectiveBrief brief();

	/** Returns the profiles that can be chosen: those of the home and all that are registered. Another object after a change. */
	ProfileCatalogue profiles();

	/** Returns the profiles that lie as files in the home, by their file names, sound or not. */
	List<HomeProfile> ownProfiles();

	/** Returns what lays rooms of the home out, with the profiles of now: for what is only tried. */
	RoomDesigner designer();

	/** Returns the rooms in the order of the survey, each with one session that lives as long as this one. */
	List<RoomSession> rooms();

	/** Finds the session of a room of this home. */
	Optional<RoomSession> sessionOf(Room room);

	/**
	 * Returns the undo history of the home's own details and of the brief for all rooms. What is executed here is written
	 * at once, and every room is laid out again.
	 */
	CommandStack commandStack();

	/**
	 * Reads the home and all rooms again, after files were written by something else than this session. Undo histories
	 * begin anew; listeners of the rooms are told that they were replaced.
	 *
	 * @param monitor shows progress, null for none
	 * @throws CoreException if a file cannot be read; the session then keeps what it had
	 */
	void reload(IProgressMonitor monitor) throws CoreException;
}
