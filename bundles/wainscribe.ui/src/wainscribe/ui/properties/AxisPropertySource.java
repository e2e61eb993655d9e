// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.properties;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.command.UnexecutableCommand;
import org.eclipse.ui.views.properties.IPropertyDescriptor;
import org.eclipse.ui.views.properties.PropertyDescriptor;

import wainscribe.layout.Tier;
import wainscribe.layout.axes.AxisCheck;
import wainscribe.layout.axes.AxisFit;
import wainscribe.model.Axis;
import wainscribe.ui.session.RoomSession;

/** A marked axis: where it is, and how the frames of each tier lie about it. */
final class AxisPropertySource extends CommandPropertySource {

	private final RoomSession session;
	private final Axis axis;
	private final FeatureWords words;
	private final ElementPropertySource element;

	AxisPropertySource(RoomSession session, Axis axis, FeatureWords words, FeatureDescriptors descriptors) {
		super(session.commandStack());
		this.session = session;
		this.axis = axis;
		this.words = words;
		this.element = new ElementPropertySource(axis, session.commandStack(), words, descriptors);
	}

	@Override
	public IPropertyDescriptor[] getPropertyDescriptors() {
		List<IPropertyDescriptor> all = new ArrayList<>(element.descriptors());
		fits().forEach(fit -> all.add(descriptor(fit.tier())));
		return all.toArray(IPropertyDescriptor[]::new);
	}

	private PropertyDescriptor descriptor(Tier tier) {
		PropertyDescriptor descriptor = new PropertyDescriptor(tier, words.word("Axis." + tier.name().toLowerCase(Locale.ROOT))); //$NON-NLS-1$
		descriptor.setCategory(words.word("group.frames")); //$NON-NLS-1$
		return descriptor;
	}

	@Override
	public Object getPropertyValue(Object id) {
		return id instanceof Tier tier ? fit(tier).map(fit -> fit.sentence(session.units())).orElse("") //$NON-NLS-1$
			: element.getPropertyValue(id);
	}

	@Override
	public boolean isPropertySet(Object id) {
		return id instanceof Tier || element.isPropertySet(id);
	}

	@Override
	protected Command change(Object id, Object value) {
		return id instanceof Tier ? UnexecutableCommand.INSTANCE : element.change(id, value);
	}

	private Optional<AxisFit> fit(Tier tier) {
		return fits().stream().filter(fit -> fit.tier() == tier).findFirst();
	}

	private List<AxisFit> fits() {
		return AxisCheck.of(session.design().layout()).stream().filter(fit -> fit.axis().marked() == axis).toList();
	}
}
