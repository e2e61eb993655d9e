// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.properties;

import java.util.Arrays;
import java.util.Locale;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.command.UnexecutableCommand;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.jface.viewers.LabelProvider;
import org.eclipse.ui.views.properties.IPropertyDescriptor;
import org.eclipse.ui.views.properties.PropertyDescriptor;

import wainscribe.commands.MoveRailCommand;
import wainscribe.commands.SetDecisionCommand;
import wainscribe.layout.RailBand;
import wainscribe.model.WainscribePackage.Literals;
import wainscribe.model.length.Length;
import wainscribe.ui.session.RoomSession;

/** The rail of a room: derived from the brief, so that typing a number decides it for the room. */
final class RailPropertySource extends CommandPropertySource {

	private enum Property {
		TOP, BOTTOM, FACE, THICKNESS;

		private String word() {
			return "RailBand." + name().toLowerCase(Locale.ROOT); //$NON-NLS-1$
		}
	}

	private final RoomSession session;
	private final RailBand rail;
	private final FeatureWords words;

	RailPropertySource(RoomSession session, RailBand rail, FeatureWords words) {
		super(session.commandStack());
		this.session = session;
		this.rail = rail;
		this.words = words;
	}

	@Override
	public IPropertyDescriptor[] getPropertyDescriptors() {
		return Arrays.stream(Property.values()).map(this::descriptor).toArray(IPropertyDescriptor[]::new);
	}

	@Override
	public Object getPropertyValue(Object id) {
		return switch ((Property) id) {
			case TOP -> rail.top();
			case BOTTOM -> rail.bottom();
			case FACE -> rail.top().minus(rail.bottom());
			case THICKNESS -> rail.thickness();
		};
	}

	@Override
	public boolean isPropertySet(Object id) {
		return true;
	}

	@Override
	protected Command change(Object id, Object value) {
		return switch ((Property) id) {
			case TOP -> new MoveRailCommand(session.room(), (Length) value);
			case BOTTOM -> UnexecutableCommand.INSTANCE;
			case FACE -> decision(Literals.BRIEF__RAIL_FACE, value);
			case THICKNESS -> decision(Literals.BRIEF__RAIL_THICKNESS, value);
		};
	}

	private Command decision(EAttribute feature, Object value) {
		return new SetDecisionCommand(session.room(), feature, value, words.of(Literals.BRIEF, feature));
	}

	private PropertyDescriptor descriptor(Property property) {
		LengthText text = new LengthText(session.units(), LengthText.Range.ABOVE_ZERO);
		String name = words.word(property.word());
		PropertyDescriptor descriptor = property == Property.BOTTOM ? new PropertyDescriptor(property, name)
			: new TextValueDescriptor<>(property, name, text, false);
		if (property == Property.BOTTOM) {
			descriptor.setLabelProvider(LabelProvider.createTextProvider(value -> text.shown((Length) value)));
		}
		descriptor.setCategory(words.word("group.place")); //$NON-NLS-1$
		return descriptor;
	}
}
