// SPDX-License-Identifier: EPL-2.0
package wainscribe.profile.shape;

import java.util.Optional;

import org.eclipse.osgi.util.NLS;

import wainscribe.profile.TrimProfile;
import wainscribe.profile.section.ProfileSection;
import wainscribe.profile.section.SectionBox;
import wainscribe.profile.section.SectionCheck;

/** What came of drawing a shape to a size: a profile, or one sentence that says why there is none. */
public final class ShapeOutcome {

	private final TrimProfile profile;
	private final String fault;

	private ShapeOutcome(TrimProfile profile, String fault) {
		this.profile = profile;
		this.fault = fault;
	}

	static ShapeOutcome failed(String fault) {
		return new ShapeOutcome(null, fault);
	}

	static ShapeOutcome of(ShapeRequest request, ProfileShape by, ShapeSize size) {
		try {
			ProfileSection section = by.section(size);
			Optional<String> unsound = new SectionCheck().firstFault(section).or(() -> otherSize(section, size));
			return unsound.map(why -> failed(NLS.bind(Messages.ShapeRequest_CannotBeDrawn, request.id(), why))).orElseGet(
					() -> new ShapeOutcome(new TrimProfile(request.id(), request.nameOf(by), by.uses(), section), null));
		} catch (RuntimeException e) {
			// A contributed shape must not take the catalogue with it.
			return failed(NLS.bind(Messages.ShapeRequest_CannotBeDrawn, request.id(), e.getMessage()));
		}
	}

	private static Optional<String> otherSize(ProfileSection section, ShapeSize size) {
		SectionBox box = section.box();
		return box.width().equals(size.width()) && box.projection().equals(size.thickness()) ? Optional.empty()
			: Optional.of(NLS.bind(Messages.ShapeRequest_OtherSize, box.width().toMillimetres(), box.projection().toMillimetres()));
	}

	/** Returns the profile; empty if it cannot be made. */
	public Optional<TrimProfile> profile() {
		return Optional.ofNullable(profile);
	}

	/** Returns why there is no profile; empty if there is one. */
	public Optional<String> fault() {
		return Optional.ofNullable(fault);
	}
}
