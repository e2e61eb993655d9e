// SPDX-License-Identifier: EPL-2.0
package wainscribe.examples.profile;

import java.util.List;
import java.util.Set;

import wainscribe.model.ProfileUse;
import wainscribe.model.length.Length;
import wainscribe.profile.ProfileSource;
import wainscribe.profile.TrimProfile;
import wainscribe.profile.section.SectionPath;

/**
 * Example of a profile source: a band of three reeds on a flat back, 36 mm wide and 12 mm thick.
 * <p>
 * A section is drawn with the wall below, from its lower back corner along the exposed face to its upper back corner; width,
 * thickness and girth of the profile follow from it.
 */
public final class ReededProfiles implements ProfileSource {

	private static final int REEDS = 3;
	private static final Length REED = Length.ofMillimetres(12);
	private static final Length BACK = Length.ofMillimetres(6);

	@Override
	public List<TrimProfile> profiles() {
		SectionPath path = SectionPath.atOrigin().out(BACK);
		for (int i = 0; i < REEDS; i++) {
			path.halfRound(REED);
		}
		return List.of(new TrimProfile("example-reeds-36", Messages.ReededProfiles_Name, //$NON-NLS-1$
				Set.of(ProfileUse.FRAME, ProfileUse.BATTEN), path.out(BACK.negated()).section()));
	}
}
