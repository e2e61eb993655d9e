// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.session;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.HashMap;
import java.util.Map;
import java.util.stream.Stream;

import org.eclipse.core.runtime.ILog;

import wainscribe.model.storage.HomeFolder;

/**
 * When the files of a home were last written, so that a change made by somebody else can be told from one's own.
 *
 * @param written time of each file
 */
record FileMarks(Map<Path, FileTime> written) {

	/** Copies the map. */
	FileMarks {
		written = Map.copyOf(written);
	}

	/** Reads the marks of a home. */
	static FileMarks of(HomeFolder folder) {
		Map<Path, FileTime> marks = new HashMap<>();
		Path rooms = folder.directory().resolve(HomeFolder.ROOMS_FOLDER);
		read(folder.directory().resolve(HomeFolder.HOME_FILE), marks);
		if (Files.isDirectory(rooms)) {
			try (Stream<Path> files = Files.list(rooms)) {
				files.filter(file -> file.toString().endsWith('.' + HomeFolder.ROOM_EXTENSION)).forEach(file -> read(file, marks));
			} catch (IOException e) {
				ILog.get().warn(e.getLocalizedMessage(), e);
			}
		}
		return new FileMarks(marks);
	}

	/** Tells whether nothing was written since these were read. */
	boolean areOf(HomeFolder folder) {
		return equals(of(folder));
	}

	private static void read(Path file, Map<Path, FileTime> marks) {
		try {
			marks.put(file, Files.getLastModifiedTime(file));
		} catch (IOException e) {
			// a file that is just being replaced counts as changed
			marks.remove(file);
		}
	}
}
