// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.properties;

import java.util.Arrays;
import java.util.Locale;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.command.UnexecutableCommand;
import org.eclipse.jface.viewers.LabelProvider;
import org.eclipse.ui.views.properties.IPropertyDescriptor;
import org.eclipse.ui.views.properties.PropertyDescriptor;

import wainscribe.layout.StripOutline;
import wainscribe.model.length.Length;
import wainscribe.ui.session.RoomSession;

/** A batten or board: what it is and where; it follows from the room, so nothing of it is typed. */
final class StripPropertySource extends CommandPropertySource {

	/** What is shown of a strip. */
	private enum Property {
		ID("FrameOutline.id", "what"), TIER("FrameOutline.tier", "what"), KIND("StripOutline.kind", "what"), //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$ //$NON-NLS-4$ //$NON-NLS-5$ //$NON-NLS-6$
		X("x", "place"), Y("y", "place"), WIDTH("width", "place"), HEIGHT("height", "place"); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$ //$NON-NLS-4$ //$NON-NLS-5$ //$NON-NLS-6$ //$NON-NLS-7$ //$NON-NLS-8$

		private final String word;
		private final String group;

		Property(String word, String group) {
			this.word = word;
			this.group = group;
		}
	}

	private final RoomSession session;
	private final StripOutline strip;
	private final FeatureWords words;

	StripPropertySource(RoomSession session, StripOutline strip, FeatureWords words) {
		super(session.commandStack());
		this.session = session;
		this.strip = strip;
		this.words = words;
	}

	@Override
	public IPropertyDescriptor[] getPropertyDescriptors() {
		return Arrays.stream(Property.values()).map(this::descriptor).toArray(IPropertyDescriptor[]::new);
	}

	@Override
	public Object getPropertyValue(Object id) {
		return switch ((Property) id) {
			case ID -> strip.id();
			case TIER -> words.wordOr("tier." + strip.tier().word(), strip.tier().word()); //$NON-NLS-1$
			case KIND -> kind(words, strip);
			case X -> strip.x();
			case Y -> strip.y();
			case WIDTH -> strip.width();
			case HEIGHT -> strip.height();
		};
	}

	/** Returns what a strip is, in a word. */
	static String kind(FeatureWords words, StripOutline strip) {
		return words.word("strip." + strip.kind().name().toLowerCase(Locale.ROOT)); //$NON-NLS-1$
	}

	@Override
	public boolean isPropertySet(Object id) {
		return false;
	}

	@Override
	protected Command change(Object id, Object value) {
		return UnexecutableCommand.INSTANCE;
	}

	private PropertyDescriptor descriptor(Property property) {
		PropertyDescriptor descriptor = new PropertyDescriptor(property, words.word(property.word));
		descriptor.setCategory(words.word("group." + property.group)); //$NON-NLS-1$
		LengthText text = new LengthText(session.units(), LengthText.Range.ZERO_OR_MORE);
		descriptor.setLabelProvider(LabelProvider.createTextProvider(
				value -> value instanceof Length length ? text.shown(length) : String.valueOf(value)));
		return descriptor;
	}
}
