// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile.session;

import java.util.Objects;
import java.util.Optional;

import wainscribe.ui.profile.backdrop.Backdrop;

/**
 * What a step of the history leaves behind.
 *
 * @param draft   the profile
 * @param picture what lies behind it; null for nothing
 */
record DeskState(ProfileDraft draft, Backdrop picture) {

	/** Refuses a state without a profile. */
	DeskState {
		Objects.requireNonNull(draft);
	}

	Optional<Backdrop> backdrop() {
		return Optional.ofNullable(picture);
	}
}
