// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.session;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EventObject;
import java.util.List;
import java.util.Optional;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IPath;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.Status;
import org.eclipse.emf.common.command.BasicCommandStack;
import org.eclipse.emf.common.command.CommandStack;
import org.eclipse.swt.widgets.Display;

import wainscribe.layout.EffectiveBrief;
import wainscribe.layout.RoomDesigner;
import wainscribe.model.Home;
import wainscribe.model.Room;
import wainscribe.model.WainscribeFactory;
import wainscribe.model.length.LengthUnit;
import wainscribe.model.storage.HomeFolder;
import wainscribe.profile.ProfileCatalogue;

/** A home that is open: its folder, and a session for each room. */
final class OpenHome implements HomeSession {

	private final IProject project;
	private final RoomStudy registered;
	private final Display display;
	private final BasicCommandStack commands = new BasicCommandStack();
	private HomeFolder folder;
	private FileMarks marks;
	private ProfileShelf shelf;
	private RoomStudy study;
	private List<OpenRoom> rooms = List.of();

	OpenHome(IProject project, HomeFolder folder, RoomStudy study, Display display) {
		this.project = project;
		this.registered = study;
		this.display = display;
		commands.addCommandStackListener(this::decided);
		this.folder = folder;
		readProfiles();
		take(folder);
	}

	@Override
	public IProject project() {
		return project;
	}

	@Override
	public Home home() {
		return folder.home();
	}

	@Override
	public LengthUnit units() {
		return home().getUnits();
	}

	@Override
	public EffectiveBrief brief() {
		return study.brief(home(), WainscribeFactory.eINSTANCE.createRoom());
	}

	@Override
	public ProfileCatalogue profiles() {
		return study.profiles();
	}

	@Override
	public List<HomeProfile> ownProfiles() {
		return shelf.files();
	}

	@Override
	public RoomDesigner designer() {
		return study.designer();
	}

	/** Returns what derives the rooms. Another object after the profiles of the home changed. */
	RoomStudy study() {
		return study;
	}

	/** Reads the profiles of the home again; tells whether anything changed, and then lays all rooms out anew. */
	boolean followProfiles() {
		ProfileShelf before = shelf;
		if (project.isAccessible()) {
			readProfiles();
		}
		boolean changed = !shelf.isLike(before);
		if (changed) {
			rooms.forEach(OpenRoom::redesign);
		}
		return changed;
	}

	private void readProfiles() {
		shelf = ProfileShelf.read(this, registered);
		study = registered.with(shelf.sound());
	}

	@Override
	public List<RoomSession> rooms() {
		return List.copyOf(rooms);
	}

	@Override
	public Optional<RoomSession> sessionOf(Room room) {
		return rooms.stream().filter(session -> session.room() == room).map(RoomSession.class::cast).findFirst();
	}

	@Override
	public CommandStack commandStack() {
		return commands;
	}

	@Override
	public void reload(IProgressMonitor monitor) throws CoreException {
		HomeFolder fresh = fresh();
		project.refreshLocal(IResource.DEPTH_INFINITE, monitor);
		commands.flush();
		take(fresh);
	}

	/** Reads the files again if somebody else wrote them and nothing here is waiting to be saved. */
	void followFiles() {
		boolean gone = !project.isAccessible() || !HomeFolder.isHome(folder.directory());
		if (gone || marks.areOf(folder) || rooms.stream().anyMatch(RoomSession::isDirty)) {
			return;
		}
		try {
			commands.flush();
			take(fresh());
		} catch (CoreException e) {
			ILog.get().log(e.getStatus());
		}
	}

	/** Writes one room. */
	void save(Room room, IProgressMonitor monitor) throws CoreException {
		try {
			folder.save(room);
		} catch (IOException e) {
			throw new CoreException(Status.error(e.getLocalizedMessage(), e));
		}
		marks = FileMarks.of(folder);
		fileOf(folder.fileOf(room)).refreshLocal(IResource.DEPTH_ZERO, monitor);
	}

	/** Reads one room from its file. */
	Room stored(Room room) throws CoreException {
		return fresh().roomAt(folder.fileOf(room))
			.orElseThrow(() -> new CoreException(Status.error(Messages.OpenHome_RoomFileGone)));
	}

	void dispose() {
		rooms.forEach(OpenRoom::dispose);
	}

	private HomeFolder fresh() throws CoreException {
		try {
			return HomeFolder.open(folder.directory());
		} catch (IOException e) {
			throw new CoreException(Status.error(e.getLocalizedMessage(), e));
		}
	}

	/** Goes over to what was read; a room that is still there keeps its session. */
	private void take(HomeFolder fresh) {
		List<OpenRoom> old = new ArrayList<>(rooms);
		List<OpenRoom> now = new ArrayList<>();
		List<Runnable> news = new ArrayList<>();
		for (Room room : fresh.rooms()) {
			IFile file = fileOf(fresh.fileOf(room));
			Optional<OpenRoom> kept = old.stream().filter(session -> session.file().equals(file)).findFirst();
			kept.ifPresent(session -> news.add(() -> session.replace(room)));
			now.add(kept.orElseGet(() -> new OpenRoom(this, room, file, display)));
		}
		old.removeAll(now);
		old.forEach(OpenRoom::dispose);
		folder = fresh;
		marks = FileMarks.of(fresh);
		rooms = now;
		news.forEach(Runnable::run);
		rooms.forEach(OpenRoom::check);
	}

	private void decided(@SuppressWarnings("unused") EventObject event) {
		try {
			folder.saveHome();
			marks = FileMarks.of(folder);
			project.refreshLocal(IResource.DEPTH_ONE, null);
		} catch (IOException e) {
			ILog.get().error(e.getLocalizedMessage(), e);
		} catch (CoreException e) {
			ILog.get().log(e.getStatus());
		}
		rooms.forEach(OpenRoom::redesign);
	}

	private IFile fileOf(Path path) {
		Path root = project.getLocation().toPath().toAbsolutePath().normalize();
		return project.getFile(IPath.fromPath(root.relativize(path.toAbsolutePath().normalize())));
	}
}
