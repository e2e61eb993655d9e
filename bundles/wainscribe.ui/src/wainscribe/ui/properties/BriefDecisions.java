// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.properties;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.ui.views.properties.IPropertyDescriptor;
import org.eclipse.ui.views.properties.PropertyDescriptor;

import wainscribe.model.Brief;
import wainscribe.model.Material;
import wainscribe.model.ProfileReference;
import wainscribe.model.ProfileUse;
import wainscribe.model.WainscribePackage.Literals;

/** The decisions of a brief as properties, each with what holds while nothing is decided. */
final class BriefDecisions {

	private static final List<EAttribute> ORDER = List.of(Literals.BRIEF__PATTERN, Literals.BRIEF__MATERIAL,
		Literals.BRIEF__RAIL, Literals.BRIEF__RAIL_FACE, Literals.BRIEF__RAIL_THICKNESS, Literals.BRIEF__GAP,
		Literals.BRIEF__GAP_Y, Literals.BRIEF__FACE, Literals.BRIEF__THICKNESS, Literals.BRIEF__FRAME_WIDTH_MIN,
		Literals.BRIEF__FRAME_WIDTH_MAX, Literals.BRIEF__BASE, Literals.BRIEF__CROWN, Literals.BRIEF__BOARD,
		Literals.BRIEF__BOARD_WALLS, Literals.BRIEF__INSIDE, Literals.BRIEF__BASE_AT_CASING, Literals.BRIEF__SAW,
		Literals.BRIEF__GLASS_LAP, Literals.BRIEF__GLASS_CLEARANCE, Literals.BRIEF__STOCK, Literals.BRIEF__NAIL);

	private static final List<ProfileUse> PROFILES = List.of(ProfileUse.FRAME, ProfileUse.RAIL, ProfileUse.BASE, ProfileUse.CROWN);

	private final FeatureDescriptors descriptors;
	private final FeatureWords words;

	BriefDecisions(FeatureDescriptors descriptors, FeatureWords words) {
		this.descriptors = requireNonNull(descriptors);
		this.words = requireNonNull(words);
	}

	/** Tells whether a property is a decision of a brief. */
	static boolean isDecision(Object id) {
		return id instanceof EAttribute attribute && ORDER.contains(attribute);
	}

	/** Describes all decisions in the order shown. */
	List<IPropertyDescriptor> descriptors() {
		List<IPropertyDescriptor> all = new ArrayList<>();
		for (EAttribute feature : ORDER) {
			PropertyDescriptor descriptor = feature == Literals.BRIEF__MATERIAL
				? new ChoiceDescriptor(feature, nameOf(feature), materials())
				: descriptors.of(Literals.BRIEF, feature).orElseThrow();
			descriptor.setCategory(words.groupOf(Literals.BRIEF, feature));
			all.add(descriptor);
		}
		return all;
	}

	/** Describes the choice of mouldings. */
	List<IPropertyDescriptor> profileDescriptors() {
		List<IPropertyDescriptor> all = new ArrayList<>();
		for (ProfileUse use : PROFILES) {
			ChoiceDescriptor descriptor = new ChoiceDescriptor(use, words.of(Literals.PROFILE_USE, use),
				descriptors.briefChoices().profilesFor(use));
			descriptor.setCategory(words.word("group.decisions")); //$NON-NLS-1$
			all.add(descriptor);
		}
		return all;
	}

	/** Returns what a decision is called. */
	String nameOf(EAttribute feature) {
		return words.of(Literals.BRIEF, feature);
	}

	/**
	 * Returns a decision.
	 *
	 * @param brief     where it may have been made, null for no brief
	 * @param feature   which one
	 * @param otherwise what holds if it was not made here
	 */
	static Decision of(Brief brief, EAttribute feature, Function<EAttribute, Decision> otherwise) {
		return ownValue(brief, feature).map(own -> new Decision(own, own, "")).orElseGet(() -> otherwise.apply(feature)); //$NON-NLS-1$
	}

	/** Returns what a brief decides; empty if it leaves it open. */
	static Optional<Object> ownValue(Brief brief, EAttribute feature) {
		if (brief == null || !brief.eIsSet(feature)) {
			return Optional.empty();
		}
		Object value = brief.eGet(feature);
		return Optional.ofNullable(value instanceof List<?> list ? List.copyOf(list) : value);
	}

	/** Returns the profile that a brief chooses for a use; empty if it leaves it open. */
	static Optional<String> ownProfile(Brief brief, ProfileUse use) {
		return brief == null ? Optional.empty()
			: brief.getProfiles().stream().filter(chosen -> chosen.getUse() == use).map(ProfileReference::getProfile).findFirst();
	}

	/** A material that was not recorded is one that was not decided. */
	private Choices materials() {
		List<Object> values = new ArrayList<>(Material.VALUES);
		values.set(values.indexOf(Material.UNRECORDED), null);
		return new Choices(values, value -> value == null ? words.word("not-decided") : words.of(Literals.MATERIAL, (Material) value)); //$NON-NLS-1$
	}
}
