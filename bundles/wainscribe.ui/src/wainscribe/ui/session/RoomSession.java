// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.session;

import java.util.List;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.emf.common.command.CommandStack;

import wainscribe.layout.RoomDesign;
import wainscribe.model.Home;
import wainscribe.model.Room;
import wainscribe.model.length.LengthUnit;
import wainscribe.rules.Finding;

/**
 * A room that is open: what all its editors and views share. One model, one undo history, one derived design.
 * <p>
 * The model is changed only by commands on {@link #commandStack()}; everything derived follows. To be used in the user
 * interface thread. An editor or view that shows a room answers {@code getAdapter(RoomSession.class)} with its session, so
 * that the properties and the findings know which room is meant.
 */
public interface RoomSession {

	/** Returns the session of the home the room belongs to. */
	HomeSession homeSession();

	/** Returns the home the room belongs to. */
	Home home();

	/** Returns the room. Another object after the home was reloaded, see {@link RoomSessionListener#roomReplaced}. */
	Room room();

	/** Returns the file that the room is kept in. */
	IFile file();

	/** Returns the unit in which lengths are shown and in which bare numbers are typed. */
	LengthUnit units();

	/** Returns the one undo history of the room. */
	CommandStack commandStack();

	/**
	 * Returns what follows from the survey and the decisions. Up to date after each executed, undone or redone command;
	 * the same object until then.
	 *
	 * @return the design, never null; where the brief names an unknown pattern it stays without frames
	 */
	RoomDesign design();

	/** Returns what the rules found at the last check, the heaviest first; never null, empty before the first check. */
	List<Finding> findings();

	/** Tells whether the room was checked at least once; until then an empty list of findings says nothing. */
	boolean isChecked();

	/** Returns how many frames the room had at the last check; 0 before the first. */
	int frameCount();

	/** Tells whether there are edits that were not saved. */
	boolean isDirty();

	/**
	 * Writes the room, beside the old file and then in its place.
	 *
	 * @param monitor shows progress, null for none
	 * @throws CoreException if it cannot be written; the old file is then untouched
	 */
	void save(IProgressMonitor monitor) throws CoreException;

	/** Starts to tell a listener; adding it twice changes nothing. */
	void addListener(RoomSessionListener listener);

	/** Stops to tell a listener. */
	void removeListener(RoomSessionListener listener);
}
