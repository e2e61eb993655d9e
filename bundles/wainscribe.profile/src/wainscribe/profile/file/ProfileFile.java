// SPDX-License-Identifier: EPL-2.0
package wainscribe.profile.file;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Objects;
import java.util.UUID;

import wainscribe.model.storage.HomeFileException;
import wainscribe.profile.TrimProfile;
import wainscribe.profile.section.SectionCheck;

/**
 * A profile in a file of its own: XML, described in {@code doc/profile-files.md} of this bundle. What is written is read back
 * as the very same profile.
 */
public final class ProfileFile {

	/** Extension of the files, without a dot. */
	public static final String EXTENSION = "profile"; //$NON-NLS-1$

	private final Path path;

	/** Names the file. */
	public ProfileFile(Path path) {
		this.path = Objects.requireNonNull(path);
	}

	/**
	 * Reads the profile.
	 *
	 * @return a profile with a sound section
	 * @throws HomeFileException if the file cannot be read or its section cannot be cut; one line that names file, place and what
	 *                           was expected
	 */
	public TrimProfile read() throws HomeFileException {
		TrimProfile profile = readAsDrawn();
		String fault = new SectionCheck().firstFault(profile.section()).orElse(null);
		if (fault != null) {
			throw new HomeFileException(path, fault);
		}
		return profile;
	}

	/**
	 * Reads the profile as it was drawn, for the table where it is mended: its section may have faults.
	 *
	 * @throws HomeFileException if the file cannot be read
	 */
	public TrimProfile readAsDrawn() throws HomeFileException {
		try (var in = Files.newInputStream(path)) {
			return new ProfileReader(path).read(in);
		} catch (HomeFileException e) {
			throw e;
		} catch (IOException e) {
			throw new HomeFileException(path, "can't be read (" + e.getMessage() + "); expected the file of a profile"); //$NON-NLS-1$ //$NON-NLS-2$
		}
	}

	/**
	 * Writes the profile beside its place and then renames it, so that a failure leaves the old file.
	 *
	 * @throws IOException if the file cannot be written
	 */
	public void write(TrimProfile profile) throws IOException {
		Files.createDirectories(path.toAbsolutePath().getParent());
		Path beside = path.resolveSibling("." + path.getFileName() + '.' + UUID.randomUUID() + ".writing"); //$NON-NLS-1$ //$NON-NLS-2$
		try {
			Files.writeString(beside, new ProfileWriter(profile).text());
			Files.move(beside, path, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
		} finally {
			Files.deleteIfExists(beside);
		}
	}
}
