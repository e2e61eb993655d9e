// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile.session;

import java.util.List;
import java.util.Objects;
import java.util.Set;

import wainscribe.model.Material;
import wainscribe.model.ProfileUse;
import wainscribe.profile.FinishState;
import wainscribe.profile.SupplyLength;
import wainscribe.profile.TrimProfile;
import wainscribe.profile.section.ProfileSection;

/**
 * A profile while it is drawn. Its section stays where it is on the desk, open or closed; only what is written is settled.
 *
 * @param data    all but the section
 * @param section the section as drawn
 */
public record ProfileDraft(TrimProfile data, ProfileSection section) {

	/** Refuses nulls. */
	public ProfileDraft {
		Objects.requireNonNull(data);
		Objects.requireNonNull(section);
	}

	/** Returns the draft of a profile. */
	public static ProfileDraft of(TrimProfile profile) {
		return new ProfileDraft(profile, profile.section());
	}

	/** Returns the profile as it is written. */
	public TrimProfile profile() {
		return data.withSection(section);
	}

	/** Returns the draft with another section. */
	public ProfileDraft with(ProfileSection other) {
		return new ProfileDraft(data, other);
	}

	/** Returns the draft under another name. */
	public ProfileDraft named(String name) {
		return new ProfileDraft(new TrimProfile(data.id(), name, data.uses(), data.material(), data.finish(), data.section(),
				data.supply()), section);
	}

	/** Returns the draft meant for something else. */
	public ProfileDraft usedAs(Set<ProfileUse> uses) {
		return new ProfileDraft(new TrimProfile(data.id(), data.name(), uses, data.material(), data.finish(), data.section(),
				data.supply()), section);
	}

	/** Returns the draft made of something else. */
	public ProfileDraft madeOf(Material material) {
		return new ProfileDraft(new TrimProfile(data.id(), data.name(), data.uses(), material, data.finish(), data.section(),
				data.supply()), section);
	}

	/** Returns the draft as it comes from the yard. */
	public ProfileDraft finished(FinishState finish) {
		return new ProfileDraft(new TrimProfile(data.id(), data.name(), data.uses(), data.material(), finish, data.section(),
				data.supply()), section);
	}

	/** Returns the draft sold in other lengths. */
	public ProfileDraft sold(List<SupplyLength> supply) {
		return new ProfileDraft(new TrimProfile(data.id(), data.name(), data.uses(), data.material(), data.finish(),
				data.section(), supply), section);
	}
}
