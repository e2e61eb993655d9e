// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.properties;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.command.UnexecutableCommand;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.osgi.util.NLS;
import org.eclipse.ui.views.properties.IPropertyDescriptor;
import org.eclipse.ui.views.properties.PropertyDescriptor;

import wainscribe.commands.ChooseProfileCommand;
import wainscribe.commands.ElementWords;
import wainscribe.commands.SetDecisionCommand;
import wainscribe.model.Brief;
import wainscribe.model.ProfileUse;
import wainscribe.model.WainscribePackage.Literals;
import wainscribe.ui.session.RoomSession;

/** A room: what was measured, and what was decided for it. */
final class RoomPropertySource extends CommandPropertySource {

	private static final String GOES = "goes"; //$NON-NLS-1$

	private final RoomSession session;
	private final FeatureWords words;
	private final ElementPropertySource room;
	private final BriefDecisions decisions;

	RoomPropertySource(RoomSession session, FeatureWords words, FeatureDescriptors descriptors) {
		super(session.commandStack());
		this.session = session;
		this.words = words;
		this.room = new ElementPropertySource(session.room(), session.commandStack(), words, descriptors);
		this.decisions = new BriefDecisions(descriptors, words);
	}

	@Override
	public IPropertyDescriptor[] getPropertyDescriptors() {
		List<IPropertyDescriptor> all = new ArrayList<>(room.descriptors());
		if (!goes().isEmpty()) {
			all.add(goesDescriptor());
		}
		all.addAll(decisions.descriptors());
		all.addAll(decisions.profileDescriptors());
		return all.toArray(IPropertyDescriptor[]::new);
	}

	@Override
	public Object getPropertyValue(Object id) {
		if (GOES.equals(id)) {
			return goes();
		}
		if (id instanceof ProfileUse use) {
			return profile(use);
		}
		return BriefDecisions.isDecision(id) ? BriefDecisions.of(session.room().getBrief(), (EAttribute) id, this::otherwise)
			: room.getPropertyValue(id);
	}

	@Override
	public boolean isPropertySet(Object id) {
		if (GOES.equals(id)) {
			return true;
		}
		if (id instanceof ProfileUse use) {
			return BriefDecisions.ownProfile(session.room().getBrief(), use).isPresent();
		}
		return BriefDecisions.isDecision(id) ? BriefDecisions.ownValue(session.room().getBrief(), (EAttribute) id).isPresent()
			: room.isPropertySet(id);
	}

	@Override
	protected Command change(Object id, Object value) {
		if (GOES.equals(id)) {
			return UnexecutableCommand.INSTANCE;
		}
		if (id instanceof ProfileUse use) {
			return new ChooseProfileCommand(session.room(), use, (String) value);
		}
		return BriefDecisions.isDecision(id)
			? new SetDecisionCommand(session.room(), (EAttribute) id, value, decisions.nameOf((EAttribute) id))
			: room.change(id, value);
	}

	private PropertyDescriptor goesDescriptor() {
		PropertyDescriptor descriptor = new PropertyDescriptor(GOES, words.word("Room.goes")); //$NON-NLS-1$
		descriptor.setCategory(words.word("group.base")); //$NON-NLS-1$
		return descriptor;
	}

	/** The existing mouldings that come off before the new go on, as the pack lists them; empty if all stay. */
	private String goes() {
		return session.room().getWalls().stream().flatMap(wall -> wall.getTrims().stream()
			.filter(trim -> Boolean.FALSE.equals(trim.getKeep()))
			.map(trim -> NLS.bind(Messages.RoomPropertySource_Goes, ElementWords.of(trim), wall.getName())))
			.collect(Collectors.joining(", ")); //$NON-NLS-1$
	}

	private Decision profile(ProfileUse use) {
		String own = BriefDecisions.ownProfile(session.room().getBrief(), use).orElse(null);
		String effective = session.design().brief().profiles().get(use);
		boolean atHome = BriefDecisions.ownProfile(session.home().getBrief(), use).isPresent();
		return new Decision(own, effective, words.word(atHome ? "origin.home" : "origin.measures")); //$NON-NLS-1$ //$NON-NLS-2$
	}

	/** What holds for the room although it was not decided for it. */
	private Decision otherwise(EAttribute feature) {
		Brief home = session.home().getBrief();
		Optional<Object> effective = effective(feature);
		if (BriefDecisions.ownValue(home, feature).isPresent()) {
			return new Decision(null, effective.orElse(null), words.word("origin.home")); //$NON-NLS-1$
		}
		if (effective.isEmpty() && (feature == Literals.BRIEF__GAP || feature == Literals.BRIEF__GAP_Y)) {
			Object chosen = feature == Literals.BRIEF__GAP ? session.design().layout().gap() : session.design().layout().gapY();
			return new Decision(null, chosen, words.word("origin.layout")); //$NON-NLS-1$
		}
		return new Decision(null, effective.orElse(null), effective.isPresent() ? words.word("origin.default") : ""); //$NON-NLS-1$ //$NON-NLS-2$
	}

	private Optional<Object> effective(EAttribute feature) {
		return EffectiveDecisions.of(session.design().brief(), feature);
	}
}
