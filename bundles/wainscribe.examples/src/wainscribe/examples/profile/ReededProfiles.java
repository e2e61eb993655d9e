// SPDX-License-Identifier: EPL-2.0
package wainscribe.examples.profile;

import java.util.List;
import java.util.Set;

import wainscribe.model.ProfileUse;
import wainscribe.model.length.Length;
import wainscribe.profile.ProfileSource;
import wainscribe.profile.SectionPath;
import wainscribe.profile.ShapedProfile;
import wainscribe.profile.TrimProfile;

/**
 * Example of a profile source: a band of three reeds on a flat back, 36 mm wide and 12 mm thick.
 * <p>
 * A section is drawn with the wall below, from its lower back corner along the exposed face to its upper back corner; width
 * and thickness of the profile must be those of the section.
 */
public final class ReededProfiles implements ProfileSource {

	private static final int REEDS = 3;
	private static final int REED = 12;
	private static final int BACK = 6;

	@Override
	public List<TrimProfile> profiles() {
		SectionPath path = new SectionPath(0, 0).line(0, BACK);
		for (int i = 0; i < REEDS; i++) {
			path.halfRound(REED);
		}
		return List.of(new ShapedProfile("example-reeds-36", Messages.ReededProfiles_Name, //$NON-NLS-1$
				Set.of(ProfileUse.FRAME, ProfileUse.BATTEN), Length.ofMillimetres(REEDS * REED),
				Length.ofMillimetres(BACK + REED / 2), path.line(0, -BACK).section()));
	}
}
