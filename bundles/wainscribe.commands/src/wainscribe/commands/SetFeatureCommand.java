// SPDX-License-Identifier: EPL-2.0
package wainscribe.commands;

import java.util.Objects;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.osgi.util.NLS;

/** Sets one feature of one object: what typing a number in the property sheet does. */
public class SetFeatureCommand extends EditCommand {

	private final EObject owner;
	private final EStructuralFeature feature;
	private final Object value;

	/**
	 * Creates a command.
	 *
	 * @param owner        the object changed
	 * @param feature      one of its features that can be changed and contains nothing
	 * @param value        the new value, a list for a many-valued feature; null for not measured or not decided
	 * @param featureLabel what the property sheet calls the feature; the step is called after it
	 */
	public SetFeatureCommand(EObject owner, EStructuralFeature feature, Object value, String featureLabel) {
		super(NLS.bind(Messages.SetFeatureCommand_Label, Objects.requireNonNull(featureLabel)), owner);
		this.owner = owner;
		this.feature = Objects.requireNonNull(feature);
		this.value = value;
	}

	@Override
	protected boolean isEffective() {
		return feature.isChangeable() && owner.eClass().getEAllStructuralFeatures().contains(feature)
				&& !Objects.equals(owner.eIsSet(feature) ? owner.eGet(feature) : null, value)
				&& !(value == null && feature.isRequired());
	}

	@Override
	protected void perform(ChangeLog changes) {
		changes.set(owner, feature, value);
	}
}
