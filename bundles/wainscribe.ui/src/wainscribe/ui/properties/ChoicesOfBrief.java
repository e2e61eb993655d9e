// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.properties;

import java.util.ArrayList;
import java.util.List;

import wainscribe.layout.pattern.PatternCatalogue;
import wainscribe.layout.pattern.PatternDescriptor;
import wainscribe.model.ProfileUse;
import wainscribe.profile.ProfileCatalogue;
import wainscribe.profile.TrimProfile;

/**
 * What can be chosen in a brief.
 *
 * @param patterns the wall patterns
 * @param profiles the trim profiles
 * @param words    what else is said
 */
record ChoicesOfBrief(PatternCatalogue patterns, ProfileCatalogue profiles, FeatureWords words) {

	/** Returns the wall patterns, with the choice to leave it to the home first. */
	Choices wallPatterns() {
		List<Object> ids = new ArrayList<>();
		ids.add(null);
		patterns.all().stream().map(PatternDescriptor::id).forEach(ids::add);
		return new Choices(ids, id -> id == null ? words.word("not-decided") //$NON-NLS-1$
			: patterns.find(id.toString()).map(PatternDescriptor::name).orElse(id.toString()));
	}

	/** Returns the profiles for a use, with the choice to leave it open first. */
	Choices profilesFor(ProfileUse use) {
		List<Object> ids = new ArrayList<>();
		ids.add(null);
		profiles.forUse(use).stream().map(TrimProfile::id).forEach(ids::add);
		return new Choices(ids, id -> id == null ? words.word("not-decided") //$NON-NLS-1$
			: profiles.find(id.toString()).map(TrimProfile::name).orElse(id.toString()));
	}
}
