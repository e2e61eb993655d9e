// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.session;

import java.util.EventObject;
import java.util.List;
import java.util.function.Consumer;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.emf.common.command.BasicCommandStack;
import org.eclipse.emf.common.command.CommandStack;
import org.eclipse.swt.widgets.Display;

import wainscribe.layout.RoomDesign;
import wainscribe.model.Home;
import wainscribe.model.Room;
import wainscribe.model.length.LengthUnit;
import wainscribe.rules.Finding;

/** A room that is open. */
final class OpenRoom implements RoomSession {

	private final OpenHome home;
	private final IFile file;
	private final RoomCheck check;
	private final BasicCommandStack commands = new BasicCommandStack();
	private final ListenerSet<RoomSessionListener> listeners = new ListenerSet<>();
	private Room room;
	private RoomDesign design;
	private RoomCheck.Result result;
	private int users;

	OpenRoom(OpenHome home, Room room, IFile file, Display display) {
		this.home = home;
		this.room = room;
		this.file = file;
		this.check = new RoomCheck(home::study, display, this::found);
		commands.addCommandStackListener(this::edited);
	}

	@Override
	public HomeSession homeSession() {
		return home;
	}

	@Override
	public Home home() {
		return home.home();
	}

	@Override
	public Room room() {
		return room;
	}

	@Override
	public IFile file() {
		return file;
	}

	@Override
	public LengthUnit units() {
		return home.units();
	}

	@Override
	public CommandStack commandStack() {
		return commands;
	}

	@Override
	public RoomDesign design() {
		if (design == null) {
			design = home.study().design(home(), room);
		}
		return design;
	}

	@Override
	public List<Finding> findings() {
		return result == null ? List.of() : result.findings();
	}

	@Override
	public boolean isChecked() {
		return result != null;
	}

	@Override
	public int frameCount() {
		return result == null ? 0 : result.frames();
	}

	@Override
	public boolean isDirty() {
		return commands.isSaveNeeded();
	}

	@Override
	public void save(IProgressMonitor monitor) throws CoreException {
		home.save(room, monitor);
		commands.saveIsDone();
		tell(listener -> listener.historyChanged(this));
	}

	@Override
	public void addListener(RoomSessionListener listener) {
		listeners.add(listener);
	}

	@Override
	public void removeListener(RoomSessionListener listener) {
		listeners.remove(listener);
	}

	/** Counts one user more. */
	void use() {
		users++;
	}

	/** Counts one user less; the last one leaves the room as it is stored. */
	void release() {
		users--;
		if (users == 0 && isDirty()) {
			try {
				RoomContents.move(home.stored(room), room);
				replace(room);
			} catch (CoreException e) {
				ILog.get().log(e.getStatus());
			}
		}
	}

	/** Goes over to a room that was read from the file. */
	void replace(Room other) {
		room = other;
		design = null;
		commands.flush();
		commands.saveIsDone();
		tell(listener -> listener.roomReplaced(this));
		tell(listener -> listener.historyChanged(this));
		check();
	}

	/** Derives everything again because the home changed. */
	void redesign() {
		design = null;
		tell(listener -> listener.designChanged(this));
		check.soon(home(), room);
	}

	/** Checks the room without waiting for a pause in the editing. */
	void check() {
		check.now(home(), room);
	}

	void dispose() {
		check.cancel();
	}

	private void edited(@SuppressWarnings("unused") EventObject event) {
		redesign();
		tell(listener -> listener.historyChanged(this));
	}

	private void found(RoomCheck.Result found) {
		result = found;
		tell(listener -> listener.findingsChanged(this));
	}

	private void tell(Consumer<RoomSessionListener> news) {
		listeners.tell(news);
	}
}
