// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.session;

import java.util.Objects;
import java.util.Optional;

import org.eclipse.core.resources.IFile;

import wainscribe.profile.TrimProfile;

/**
 * A profile that lies as a file in a home. Two that are of one file are the same.
 *
 * @param home    the home
 * @param file    its file
 * @param profile what was read; null if the file cannot be read
 * @param fault   why it cannot be chosen in a brief; empty if it can
 */
public record HomeProfile(HomeSession home, IFile file, TrimProfile profile, String fault) {

	/** Refuses nulls but in the profile. */
	public HomeProfile {
		Objects.requireNonNull(home);
		Objects.requireNonNull(file);
		Objects.requireNonNull(fault);
	}

	/** Returns what was read. */
	public Optional<TrimProfile> read() {
		return Optional.ofNullable(profile);
	}

	@Override
	public boolean equals(Object other) {
		return other instanceof HomeProfile same && same.file.equals(file);
	}

	@Override
	public int hashCode() {
		return file.hashCode();
	}
}
