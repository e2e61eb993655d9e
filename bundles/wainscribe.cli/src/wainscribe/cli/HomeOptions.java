// SPDX-License-Identifier: EPL-2.0
package wainscribe.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import picocli.CommandLine.Option;
import wainscribe.model.Room;
import wainscribe.model.storage.HomeFileException;
import wainscribe.model.storage.HomeFolder;
import wainscribe.profile.file.HomeProfiles;
import wainscribe.report.DesignServices;

/** The options that name a home and perhaps one of its rooms. */
final class HomeOptions {

	@Option(names = "--home", required = true, paramLabel = "DIR", description = "Folder of the home.")
	private Path home;

	@Option(names = "--room", paramLabel = "NAME", description = "Only this room.")
	private String room;

	/** Opens the home. */
	HomeFolder open() throws BadInputException {
		try {
			return HomeFolder.open(home);
		} catch (HomeFileException e) {
			throw new BadInputException(e.getMessage());
		} catch (IOException e) {
			throw new BadInputException(home + ": can't be read (" + e.getMessage() + "); expected the folder of a home"); //$NON-NLS-1$ //$NON-NLS-2$
		}
	}

	/** Returns the services with the profiles that lie in the home; a file that cannot be used is refused. */
	DesignServices with(DesignServices suite) throws BadInputException {
		HomeProfiles own = HomeProfiles.read(home, suite.profiles());
		if (!own.problems().isEmpty()) {
			throw new BadInputException(own.problems().getFirst());
		}
		return suite.with(own);
	}

	/** Returns the rooms asked for, in the order of the home. */
	List<Room> rooms(HomeFolder folder) throws BadInputException {
		if (room == null) {
			return folder.rooms();
		}
		Optional<Room> found = folder.room(room);
		if (found.isEmpty()) {
			throw BadInputException.option("--room", room, "one of " + folder.rooms().stream() //$NON-NLS-1$ //$NON-NLS-2$
					.map(candidate -> '"' + String.valueOf(candidate.getName()) + '"').toList());
		}
		return List.of(found.get());
	}

	/** Tells whether one room was asked for. */
	boolean isOneRoom() {
		return room != null;
	}
}
