// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile.properties;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

import org.eclipse.emf.common.command.Command;
import org.eclipse.ui.views.properties.IPropertyDescriptor;
import org.eclipse.ui.views.properties.PropertyDescriptor;

import wainscribe.model.Material;
import wainscribe.model.ProfileUse;
import wainscribe.model.WainscribePackage.Literals;
import wainscribe.profile.FinishState;
import wainscribe.profile.SupplyLength;
import wainscribe.profile.section.ProfileSection;
import wainscribe.ui.profile.Messages;
import wainscribe.ui.profile.session.ProfileDraft;
import wainscribe.ui.profile.session.ProfileSession;
import wainscribe.ui.profile.words.NodeWords;
import wainscribe.ui.profile.words.SectionNumbers;
import wainscribe.ui.properties.ChoiceDescriptor;
import wainscribe.ui.properties.Choices;
import wainscribe.ui.properties.CommandPropertySource;
import wainscribe.ui.properties.FeatureWords;
import wainscribe.ui.properties.PlainText;
import wainscribe.ui.properties.TextValueDescriptor;

/** What a profile is called, meant for, made of and sold in; and, to be read, what follows from its section. */
final class ProfilePropertySource extends CommandPropertySource {

	/** The properties; what follows from the section comes last. */
	private enum Property {
		NAME, MATERIAL, FINISH, SUPPLY, FACE, PROJECTION, GIRTH, AREA, COPING
	}

	private final ProfileSession session;
	private final FeatureWords words = new FeatureWords();

	ProfilePropertySource(ProfileSession session) {
		super(session.history());
		this.session = session;
	}

	@Override
	public IPropertyDescriptor[] getPropertyDescriptors() {
		List<PropertyDescriptor> all = new ArrayList<>();
		all.add(in(Messages.ProfilePropertySource_Profile, new TextValueDescriptor<>(Property.NAME, Messages.ProfilePropertySource_Name, new PlainText(), true)));
		all.add(in(Messages.ProfilePropertySource_Profile, new ChoiceDescriptor(Property.MATERIAL, Messages.ProfilePropertySource_Material,
				new Choices(List.copyOf(Material.VALUES), this::material))));
		all.add(in(Messages.ProfilePropertySource_Profile, new ChoiceDescriptor(Property.FINISH, Messages.ProfilePropertySource_Finish,
				new Choices(List.of((Object[]) FinishState.values()), ProfilePropertySource::finish))));
		all.add(in(Messages.ProfilePropertySource_Profile, new TextValueDescriptor<>(Property.SUPPLY, Messages.ProfilePropertySource_Supply,
				new SupplyText(session.units()), false)));
		for (ProfileUse use : ProfileUse.VALUES) {
			all.add(in(Messages.ProfilePropertySource_Uses, new ChoiceDescriptor(use, words.of(Literals.PROFILE_USE, use),
					new Choices(List.of(true, false), yes -> Boolean.TRUE.equals(yes) ? Messages.ProfilePropertySource_Yes
							: Messages.ProfilePropertySource_No))));
		}
		all.add(derived(Property.FACE, Messages.ProfilePropertySource_Face));
		all.add(derived(Property.PROJECTION, Messages.ProfilePropertySource_Projection));
		all.add(derived(Property.GIRTH, Messages.ProfilePropertySource_Girth));
		all.add(derived(Property.AREA, Messages.ProfilePropertySource_Area));
		all.add(derived(Property.COPING, Messages.ProfilePropertySource_Coping));
		return all.toArray(IPropertyDescriptor[]::new);
	}

	@Override
	public Object getPropertyValue(Object id) {
		ProfileDraft draft = session.draft();
		ProfileSection sound = session.sound();
		if (id instanceof ProfileUse use) {
			return draft.data().uses().contains(use);
		}
		return switch ((Property) id) {
			case NAME -> draft.data().name();
			case MATERIAL -> draft.data().material();
			case FINISH -> draft.data().finish();
			case SUPPLY -> draft.data().supply();
			case FACE -> NodeWords.measured(sound.box().width().approximateMillimetres(), session.units());
			case PROJECTION -> NodeWords.measured(sound.box().projection().approximateMillimetres(), session.units());
			case GIRTH -> SectionNumbers.girth(sound, session.units());
			case AREA -> SectionNumbers.area(sound, session.units());
			case COPING -> sound.canBeCoped() ? Messages.ProfilePropertySource_Coped : Messages.ProfilePropertySource_Mitred;
		};
	}

	@Override
	public boolean isPropertySet(Object id) {
		return true;
	}

	@Override
	protected Command change(Object id, Object value) {
		if (id instanceof ProfileUse use) {
			return session.changing(Messages.ProfilePropertySource_ChangeUses, with(use, Boolean.TRUE.equals(value)));
		}
		ProfileDraft draft = session.draft();
		return switch ((Property) id) {
			case NAME -> session.changing(Messages.ProfilePropertySource_ChangeName, value == null ? draft : draft.named((String) value));
			case MATERIAL -> session.changing(Messages.ProfilePropertySource_ChangeMaterial,
					draft.madeOf(value == null ? Material.UNRECORDED : (Material) value));
			case FINISH -> session.changing(Messages.ProfilePropertySource_ChangeFinish,
					draft.finished(value == null ? FinishState.UNRECORDED : (FinishState) value));
			case SUPPLY -> session.changing(Messages.ProfilePropertySource_ChangeSupply, draft.sold(supply(value)));
			default -> session.changing("", draft); //$NON-NLS-1$
		};
	}

	@SuppressWarnings("unchecked")
	private static List<SupplyLength> supply(Object value) {
		return value == null ? List.of() : (List<SupplyLength>) value;
	}

	/** A profile is meant for something: the last use stays. */
	private ProfileDraft with(ProfileUse use, boolean meant) {
		Set<ProfileUse> uses = EnumSet.copyOf(session.draft().data().uses());
		if (meant) {
			uses.add(use);
		} else if (uses.size() > 1) {
			uses.remove(use);
		}
		return session.draft().usedAs(uses);
	}

	private String material(Object value) {
		return value == Material.UNRECORDED ? Messages.ProfilePropertySource_NotRecorded : words.of(Literals.MATERIAL, (Material) value);
	}

	private static String finish(Object value) {
		return switch ((FinishState) value) {
			case UNRECORDED -> Messages.ProfilePropertySource_NotRecorded;
			case BARE -> Messages.ProfilePropertySource_Bare;
			case PRIMED -> Messages.ProfilePropertySource_Primed;
			case PREFINISHED -> Messages.ProfilePropertySource_Prefinished;
		};
	}

	private static PropertyDescriptor derived(Property property, String name) {
		return in(Messages.ProfilePropertySource_Section, new PropertyDescriptor(property, name));
	}

	private static PropertyDescriptor in(String heading, PropertyDescriptor descriptor) {
		descriptor.setCategory(heading);
		return descriptor;
	}
}
