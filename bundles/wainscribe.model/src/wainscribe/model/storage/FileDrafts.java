// SPDX-License-Identifier: EPL-2.0
package wainscribe.model.storage;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.UUID;

/**
 * Files that are to change together: each is written beside its place, to the disk, and only when all are there they are
 * renamed. What was not renamed is gone when this is closed, and the old files stay.
 */
final class FileDrafts implements AutoCloseable {

	private final Map<Path, Path> drafts = new LinkedHashMap<>();

	/** Writes one file beside its place; an unchanged file is left out. */
	void add(Path place, byte[] content) throws IOException {
		if (Files.isRegularFile(place) && Arrays.equals(Files.readAllBytes(place), content)) {
			return;
		}
		Files.createDirectories(place.getParent());
		Path beside = place.resolveSibling("." + place.getFileName() + '.' + UUID.randomUUID() + ".writing"); //$NON-NLS-1$ //$NON-NLS-2$
		drafts.put(beside, place);
		// Opened like any new file, not as a temporary one: those nobody else may read, and the home may be shared.
		try (FileChannel channel = FileChannel.open(beside, StandardOpenOption.WRITE, StandardOpenOption.CREATE_NEW)) {
			ByteBuffer buffer = ByteBuffer.wrap(content);
			while (buffer.hasRemaining()) {
				channel.write(buffer);
			}
			channel.force(true);
		}
	}

	/** Renames every draft to its place. */
	void place() throws IOException {
		for (Map.Entry<Path, Path> draft : drafts.entrySet()) {
			Files.move(draft.getKey(), draft.getValue(), StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
		}
	}

	@Override
	public void close() throws IOException {
		for (Path beside : drafts.keySet()) {
			Files.deleteIfExists(beside);
		}
	}
}
