// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.session;

import java.util.List;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.runtime.CoreException;

/**
 * Hands out the sessions of homes and rooms, one each, however many editors and views ask.
 * <p>
 * A service of the workbench: {@code site.getService(HomeSessions.class)}. Every {@code open} is answered by one
 * {@code close}; a session ends with its last user. To be called in the user interface thread.
 */
public interface HomeSessions {

	/** Where the homes of the workspace come and go; views that show all of them listen here. */
	interface Listener {

		/** A home was created, adopted, renamed or removed, or rooms were added to one. */
		void homesChanged();
	}

	/** Returns the open projects of the workspace that hold a home, by name; never null. */
	List<IProject> homes();

	/**
	 * Opens a home, or returns the session that is open already.
	 *
	 * @param project an open project with a home in it
	 * @return its session; to be given back with {@link #close(HomeSession)}
	 * @throws CoreException if the home cannot be read; the status says which file and why in one line
	 */
	HomeSession openHome(IProject project) throws CoreException;

	/**
	 * Opens a room with its home, or returns the session that is open already.
	 *
	 * @param file a room file in a home's project
	 * @return its session; to be given back with {@link #close(RoomSession)}
	 * @throws CoreException if the home or the room cannot be read; the status says which file and why in one line
	 */
	RoomSession openRoom(IFile file) throws CoreException;

	/** Gives a home back; its session ends with the last user. */
	void close(HomeSession session);

	/** Gives a room back. When the last user goes, edits that were not saved are dropped. */
	void close(RoomSession session);

	/** Starts to tell a listener; adding it twice changes nothing. */
	void addListener(Listener listener);

	/** Stops to tell a listener. */
	void removeListener(Listener listener);
}
