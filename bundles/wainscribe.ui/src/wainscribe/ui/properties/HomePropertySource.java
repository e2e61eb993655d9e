// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.properties;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.ui.views.properties.IPropertyDescriptor;

import wainscribe.commands.SetFeatureCommand;
import wainscribe.model.Brief;
import wainscribe.model.WainscribeFactory;
import wainscribe.model.WainscribePackage.Literals;
import wainscribe.ui.session.HomeSession;

/** A home: its details, and what was decided for all its rooms. */
final class HomePropertySource extends CommandPropertySource {

	private final HomeSession session;
	private final FeatureWords words;
	private final ElementPropertySource home;
	private final BriefDecisions decisions;

	HomePropertySource(HomeSession session, FeatureWords words, FeatureDescriptors descriptors) {
		super(session.commandStack());
		this.session = session;
		this.words = words;
		this.home = new ElementPropertySource(session.home(), session.commandStack(), words, descriptors);
		this.decisions = new BriefDecisions(descriptors, words);
	}

	@Override
	public IPropertyDescriptor[] getPropertyDescriptors() {
		List<IPropertyDescriptor> all = new ArrayList<>(home.descriptors());
		all.addAll(decisions.descriptors());
		return all.toArray(IPropertyDescriptor[]::new);
	}

	@Override
	public Object getPropertyValue(Object id) {
		return BriefDecisions.isDecision(id)
			? BriefDecisions.of(brief(), (EAttribute) id, this::otherwise)
			: home.getPropertyValue(id);
	}

	@Override
	public boolean isPropertySet(Object id) {
		return BriefDecisions.isDecision(id) ? BriefDecisions.ownValue(brief(), (EAttribute) id).isPresent()
			: home.isPropertySet(id);
	}

	@Override
	protected Command change(Object id, Object value) {
		if (!BriefDecisions.isDecision(id)) {
			return home.change(id, value);
		}
		EAttribute feature = (EAttribute) id;
		if (brief() != null) {
			return new SetFeatureCommand(brief(), feature, value, decisions.nameOf(feature));
		}
		Brief brief = WainscribeFactory.eINSTANCE.createBrief();
		brief.setId(EcoreUtil.generateUUID());
		brief.eSet(feature, value);
		return new SetFeatureCommand(session.home(), Literals.HOME__BRIEF, brief, decisions.nameOf(feature));
	}

	/** What holds for a room of this home without any decision. */
	private Decision otherwise(EAttribute feature) {
		boolean gap = feature == Literals.BRIEF__GAP || feature == Literals.BRIEF__GAP_Y;
		return EffectiveDecisions.of(session.brief(), feature)
			.map(value -> new Decision(null, value, words.word("origin.default"))) //$NON-NLS-1$
			.orElseGet(() -> new Decision(null, null, gap ? words.word("origin.layout") : "")); //$NON-NLS-1$ //$NON-NLS-2$
	}

	private Brief brief() {
		return session.home().getBrief();
	}
}
