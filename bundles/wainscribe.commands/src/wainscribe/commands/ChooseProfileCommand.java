// SPDX-License-Identifier: EPL-2.0
package wainscribe.commands;

import java.util.Objects;
import java.util.Optional;

import wainscribe.model.Brief;
import wainscribe.model.ProfileReference;
import wainscribe.model.ProfileUse;
import wainscribe.model.Room;
import wainscribe.model.WainscribeFactory;
import wainscribe.model.WainscribePackage.Literals;

/** Chooses the profile of the frames, the rail, the base or the crown of a room. */
public final class ChooseProfileCommand extends EditCommand {

	private final Room room;
	private final ProfileUse use;
	private final String profile;

	/**
	 * Creates a command.
	 *
	 * @param room    the room
	 * @param use     what the profile is for
	 * @param profile id of a profile of the catalogue; null lets the home decide again
	 */
	public ChooseProfileCommand(Room room, ProfileUse use, String profile) {
		super(Messages.ChooseProfileCommand_Label, room);
		this.room = room;
		this.use = Objects.requireNonNull(use);
		this.profile = profile;
	}

	@Override
	protected boolean isEffective() {
		return !Objects.equals(profile, chosen().map(ProfileReference::getProfile).orElse(null));
	}

	@Override
	protected void perform(ChangeLog changes) {
		Optional<ProfileReference> chosen = chosen();
		Brief brief = RoomBrief.ensure(room, changes);
		if (chosen.isEmpty()) {
			ProfileReference reference = WainscribeFactory.eINSTANCE.createProfileReference();
			reference.setUse(use);
			reference.setProfile(profile);
			changes.add(brief, Literals.BRIEF__PROFILES, reference);
		} else if (profile == null) {
			changes.remove(brief, Literals.BRIEF__PROFILES, chosen.get());
		} else {
			changes.set(chosen.get(), Literals.PROFILE_REFERENCE__PROFILE, profile);
		}
	}

	private Optional<ProfileReference> chosen() {
		return room.getBrief() == null ? Optional.empty()
				: room.getBrief().getProfiles().stream().filter(reference -> reference.getUse() == use).findFirst();
	}
}
