// SPDX-License-Identifier: EPL-2.0
package wainscribe.commands;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.osgi.util.NLS;

import wainscribe.model.Brief;
import wainscribe.model.ProfileReference;
import wainscribe.model.ProfileUse;
import wainscribe.model.Room;
import wainscribe.model.WainscribeFactory;
import wainscribe.model.WainscribePackage.Literals;

/**
 * Treats a room as another room of the same home is treated. What the other room leaves to the home is left to the home here
 * too, so that both go on reading alike when the home decides otherwise.
 */
public final class CopyTreatmentCommand extends EditCommand {

	private final Room target;
	private final Map<EAttribute, Object> decisions = new LinkedHashMap<>();
	private final Map<ProfileUse, String> profiles = new LinkedHashMap<>();

	/**
	 * Creates a command that copies what the source has decided when it is created.
	 *
	 * @param source the room whose treatment is copied
	 * @param target the room that gets it
	 * @param parts  which decisions; those of other parts stay as they are
	 */
	public CopyTreatmentCommand(Room source, Room target, Set<TreatmentPart> parts) {
		super(NLS.bind(Messages.CopyTreatmentCommand_Label, Objects.requireNonNullElse(source.getName(), "")), target); //$NON-NLS-1$
		this.target = target;
		for (TreatmentPart part : parts) {
			part.decisions().forEach(decision -> decisions.put(decision, decided(source.getBrief(), decision)));
			part.profiles().forEach(use -> profiles.put(use,
					reference(source.getBrief(), use).map(ProfileReference::getProfile).orElse(null)));
		}
	}

	@Override
	protected boolean isEffective() {
		Brief brief = target.getBrief();
		return decisions.entrySet().stream().anyMatch(entry -> !Objects.equals(entry.getValue(), decided(brief, entry.getKey())))
				|| profiles.entrySet().stream().anyMatch(entry -> !Objects.equals(entry.getValue(),
						reference(brief, entry.getKey()).map(ProfileReference::getProfile).orElse(null)));
	}

	@Override
	protected void perform(ChangeLog changes) {
		Brief brief = RoomBrief.ensure(target, changes);
		decisions.forEach((decision, value) -> changes.set(brief, decision, value));
		profiles.forEach((use, profile) -> choose(brief, use, profile, changes));
	}

	private static void choose(Brief brief, ProfileUse use, String profile, ChangeLog changes) {
		Optional<ProfileReference> present = reference(brief, use);
		if (present.isPresent()) {
			changes.remove(brief, Literals.BRIEF__PROFILES, present.get());
		}
		if (profile != null) {
			ProfileReference chosen = WainscribeFactory.eINSTANCE.createProfileReference();
			chosen.setUse(use);
			chosen.setProfile(profile);
			changes.add(brief, Literals.BRIEF__PROFILES, chosen);
		}
	}

	private static Object decided(Brief brief, EAttribute decision) {
		if (brief == null || !brief.eIsSet(decision)) {
			return null;
		}
		return brief.eGet(decision) instanceof List<?> list ? List.copyOf(list) : brief.eGet(decision);
	}

	private static Optional<ProfileReference> reference(Brief brief, ProfileUse use) {
		return brief == null ? Optional.empty()
				: brief.getProfiles().stream().filter(reference -> reference.getUse() == use).findFirst();
	}
}
