// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.properties;

import static java.util.Objects.requireNonNull;

import java.util.List;
import java.util.Optional;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.command.CommandStack;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.ui.views.properties.IPropertyDescriptor;

import wainscribe.commands.SetFeatureCommand;
import wainscribe.model.SurfaceZone;
import wainscribe.model.WainscribePackage.Literals;

/** The features of one surveyed or decided thing. */
final class ElementPropertySource extends CommandPropertySource {

	private final EObject element;
	private final CommandStack history;
	private final FeatureWords words;
	private final FeatureDescriptors descriptors;

	ElementPropertySource(EObject element, CommandStack history, FeatureWords words, FeatureDescriptors descriptors) {
		super(history);
		this.element = requireNonNull(element);
		this.history = history;
		this.words = requireNonNull(words);
		this.descriptors = requireNonNull(descriptors);
	}

	@Override
	public IPropertyDescriptor[] getPropertyDescriptors() {
		return descriptors().toArray(IPropertyDescriptor[]::new);
	}

	List<IPropertyDescriptor> descriptors() {
		return element.eClass().getEAllStructuralFeatures().stream().map(feature -> descriptors.of(element.eClass(), feature))
			.flatMap(Optional::stream).map(IPropertyDescriptor.class::cast).toList();
	}

	@Override
	public Object getPropertyValue(Object id) {
		EStructuralFeature feature = (EStructuralFeature) id;
		Object value = element.eGet(feature);
		if (value instanceof EObject part) {
			return new ElementPropertySource(part, history, words, descriptors);
		}
		if (value instanceof List<?> list) {
			return list.isEmpty() ? null : List.copyOf(list);
		}
		return descriptors.isChosen(feature) ? new Choice(value) : value;
	}

	@Override
	public boolean isPropertySet(Object id) {
		return element.eIsSet((EStructuralFeature) id);
	}

	@Override
	protected Command change(Object id, Object value) {
		EStructuralFeature feature = (EStructuralFeature) id;
		return new SetFeatureCommand(element, feature, value, words.of(element.eClass(), feature));
	}

	/** Shown where this stands as the value of a property of another thing: the kind of surface, if it has one. */
	@Override
	public String toString() {
		return element instanceof SurfaceZone zone ? words.of(Literals.SURFACE, zone.getSurface()) : ""; //$NON-NLS-1$
	}
}
