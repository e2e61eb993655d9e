// SPDX-License-Identifier: EPL-2.0
package wainscribe.model.storage;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.resource.ResourceSet;
import org.eclipse.emf.ecore.resource.impl.ResourceSetImpl;
import org.eclipse.emf.ecore.xmi.impl.XMIResourceImpl;

import wainscribe.model.Home;
import wainscribe.model.Room;
import wainscribe.model.Wall;
import wainscribe.model.WainscribePackage;

/**
 * A home on disk: {@value #HOME_FILE} and one {@code .room} file a room in the folder {@value #ROOMS_FOLDER}.
 * <p>
 * The objects it hands out are live; {@link #save()} writes what changed. Each file is written beside the old one and renamed, so a
 * crash leaves the old file. Not thread-safe: one owner at a time.
 */
public final class HomeFolder {

	/** Name of the file that holds the {@link Home}. */
	public static final String HOME_FILE = "wainscribe.home"; //$NON-NLS-1$
	/** Name of the folder that holds the rooms. */
	public static final String ROOMS_FOLDER = "rooms"; //$NON-NLS-1$
	/** Extension of a room file, without the dot. */
	public static final String ROOM_EXTENSION = "room"; //$NON-NLS-1$

	private final Path directory;
	private final ResourceSet resources = new ResourceSetImpl();
	private final Home home;
	private final Map<Room, Path> rooms = new LinkedHashMap<>();
	private final List<Path> removed = new ArrayList<>();

	private HomeFolder(Path directory, Home home) {
		this.directory = directory;
		this.home = home;
	}

	/** Tells whether a folder holds a home. */
	public static boolean isHome(Path directory) {
		return Files.isRegularFile(directory.resolve(HOME_FILE));
	}

	/**
	 * Makes a new home; nothing is written before {@link #save()}.
	 *
	 * @param directory where it is to be; need not exist
	 * @param home      the home, in no resource yet
	 */
	public static HomeFolder create(Path directory, Home home) {
		HomeFolder folder = new HomeFolder(Objects.requireNonNull(directory), Objects.requireNonNull(home));
		folder.attach(folder.homePath(), home);
		return folder;
	}

	/**
	 * Opens a home of today's format, or an older one if a migration knows it.
	 *
	 * @param directory  the folder
	 * @param migrations lift older files, one for each version
	 * @throws HomeFileException if a file is missing, cut, or holds something else; the message names file, row and column
	 * @throws IOException       if a file can't be read
	 */
	public static HomeFolder open(Path directory, List<FormatMigration> migrations) throws IOException {
		if (!Files.isDirectory(directory)) {
			throw new HomeFileException(directory, "expected the folder of a home"); //$NON-NLS-1$
		}
		if (!Files.exists(directory.resolve(HOME_FILE))) {
			throw new HomeFileException(directory, "holds no home; expected the file " + HOME_FILE); //$NON-NLS-1$
		}
		FormatVersion format = new FormatVersion(migrations);
		Path homePath = directory.resolve(HOME_FILE);
		Resource resource = resourceAt(homePath);
		Home home = (Home) ModelFile.read(homePath, resource, format, WainscribePackage.Literals.HOME);
		HomeFolder folder = new HomeFolder(directory, home);
		folder.resources.getResources().add(resource);
		for (Path path : folder.roomPaths()) {
			folder.read(path, format);
		}
		return folder;
	}

	/** Opens a home of today's format; see {@link #open(Path, List)}. */
	public static HomeFolder open(Path directory) throws IOException {
		return open(directory, List.of());
	}

	/** Returns the folder. */
	public Path directory() {
		return directory;
	}

	/** Returns the home. */
	public Home home() {
		return home;
	}

	/** Returns the rooms in the order of the survey. */
	public List<Room> rooms() {
		return List.copyOf(rooms.keySet());
	}

	/** Finds a room by its name. */
	public Optional<Room> room(String name) {
		return rooms.keySet().stream().filter(room -> name.equals(room.getName())).findFirst();
	}

	/** Returns where a room of this home is, or will be, stored. */
	public Path fileOf(Room room) {
		return Objects.requireNonNull(rooms.get(room), "no room of this home"); //$NON-NLS-1$
	}

	/** Finds the room stored in a file. */
	public Optional<Room> roomAt(Path file) {
		Path wanted = file.toAbsolutePath().normalize();
		return rooms.entrySet().stream().filter(entry -> entry.getValue().toAbsolutePath().normalize().equals(wanted))
				.map(Map.Entry::getKey).findFirst();
	}

	/**
	 * Adds a room; its file name is derived from its name and never leaves the home.
	 *
	 * @param room a room in no resource yet
	 */
	public void add(Room room) {
		List<String> taken = Stream.concat(rooms.values().stream(), removed.stream())
				.map(path -> path.getFileName().toString().replaceAll("\\.[^.]*$", "")).toList(); //$NON-NLS-1$ //$NON-NLS-2$
		String name = FileNames.derive(room.getName(), ROOM_EXTENSION, taken);
		Path path = directory.resolve(ROOMS_FOLDER).resolve(name + '.' + ROOM_EXTENSION);
		attach(path, room);
		rooms.put(room, path);
		home.getRoomOrder().add(path.getFileName().toString());
	}

	/** Takes a room out of the home; its file goes with the next {@link #save()}. */
	public void remove(Room room) {
		Path path = rooms.remove(room);
		if (path != null) {
			resources.getResources().remove(room.eResource());
			home.getRoomOrder().remove(path.getFileName().toString());
			removed.add(path);
		}
	}

	/**
	 * Writes every file that changed: all are written beside their places before the first is renamed.
	 *
	 * @throws IOException if a file can't be written; the old files stay
	 */
	public void save() throws IOException {
		Map<Path, Resource> files = new LinkedHashMap<>();
		rooms.forEach((room, path) -> files.put(path, room.eResource()));
		files.put(homePath(), home.eResource());
		write(files);
		for (Path path : removed) {
			Files.deleteIfExists(path);
		}
		removed.clear();
	}

	/**
	 * Writes one room.
	 *
	 * @param room a room of this home
	 * @throws IOException if it can't be written; the old file stays
	 */
	public void save(Room room) throws IOException {
		write(Map.of(fileOf(room), room.eResource()));
	}

	/**
	 * Writes the home without its rooms.
	 *
	 * @throws IOException if it can't be written; the old file stays
	 */
	public void saveHome() throws IOException {
		write(Map.of(homePath(), home.eResource()));
	}

	private static void write(Map<Path, Resource> files) throws IOException {
		try (FileDrafts drafts = new FileDrafts()) {
			for (Map.Entry<Path, Resource> file : files.entrySet()) {
				drafts.add(file.getKey(), ModelFile.bytes(file.getValue()));
			}
			drafts.place();
		}
	}

	private Path homePath() {
		return directory.resolve(HOME_FILE);
	}

	/** Rooms the home lists come first in its order; files put there by hand follow by name. */
	private List<Path> roomPaths() throws IOException {
		Path folder = directory.resolve(ROOMS_FOLDER);
		List<Path> paths = new ArrayList<>();
		for (String name : home.getRoomOrder()) {
			Path path = folder.resolve(name).normalize();
			if (!folder.normalize().equals(path.getParent())) {
				throw new HomeFileException(homePath(), "the room file " + name + " lies outside the home"); //$NON-NLS-1$ //$NON-NLS-2$
			}
			paths.add(path);
		}
		if (Files.isDirectory(folder)) {
			try (Stream<Path> files = Files.list(folder)) {
				files.filter(path -> path.getFileName().toString().endsWith('.' + ROOM_EXTENSION)
						&& !path.getFileName().toString().startsWith(".") && !paths.contains(path.normalize())) //$NON-NLS-1$
						.sorted().forEach(paths::add);
			}
		}
		return paths;
	}

	private void read(Path path, FormatVersion format) throws IOException {
		Resource resource = resourceAt(path);
		Room room = (Room) ModelFile.read(path, resource, format, WainscribePackage.Literals.ROOM);
		resources.getResources().add(resource);
		for (Wall wall : room.getWalls()) {
			if (wall.getLength() == null || wall.getLength().signum() <= 0) {
				throw new HomeFileException(path, "wall " + wall.getName() + " has no length; expected one above zero"); //$NON-NLS-1$ //$NON-NLS-2$
			}
		}
		rooms.put(room, path);
		String name = path.getFileName().toString();
		if (!home.getRoomOrder().contains(name)) {
			home.getRoomOrder().add(name);
		}
	}

	private void attach(Path path, org.eclipse.emf.ecore.EObject root) {
		Resource resource = resourceAt(path);
		resources.getResources().add(resource);
		resource.getContents().add(root);
	}

	private static Resource resourceAt(Path path) {
		return new XMIResourceImpl(URI.createFileURI(path.toAbsolutePath().toString()));
	}
}
