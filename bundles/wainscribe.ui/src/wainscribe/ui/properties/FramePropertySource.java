// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.properties;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.command.UnexecutableCommand;
import org.eclipse.jface.viewers.LabelProvider;
import org.eclipse.ui.views.properties.IPropertyDescriptor;
import org.eclipse.ui.views.properties.PropertyDescriptor;

import wainscribe.layout.FrameOutline;
import wainscribe.layout.FrameRole;
import wainscribe.model.length.Length;
import wainscribe.model.outline.Outline;
import wainscribe.ui.session.RoomSession;

/** A frame: derived, so that typing a number places and locks the frames of its tier by hand. */
final class FramePropertySource extends CommandPropertySource {

	/** The numbers of a frame and what else is said of it. */
	private enum Property {
		ID("FrameOutline.id", "what"), TIER("FrameOutline.tier", "what"), ROLE("FrameOutline.role", "what"), //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$ //$NON-NLS-4$ //$NON-NLS-5$ //$NON-NLS-6$
		LOCKED("FrameOutline.locked", "what"), X("x", "place"), Y("y", "place"), WIDTH("width", "place"), //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$ //$NON-NLS-4$ //$NON-NLS-5$ //$NON-NLS-6$ //$NON-NLS-7$ //$NON-NLS-8$
		HEIGHT("height", "place"); //$NON-NLS-1$ //$NON-NLS-2$

		private final String word;
		private final String group;

		Property(String word, String group) {
			this.word = word;
			this.group = group;
		}
	}

	private final RoomSession session;
	private final FrameOutline frame;
	private final FeatureWords words;

	FramePropertySource(RoomSession session, FrameOutline frame, FeatureWords words) {
		super(session.commandStack());
		this.session = session;
		this.frame = frame;
		this.words = words;
	}

	@Override
	public IPropertyDescriptor[] getPropertyDescriptors() {
		return Arrays.stream(Property.values()).map(this::descriptor).toArray(IPropertyDescriptor[]::new);
	}

	@Override
	public Object getPropertyValue(Object id) {
		return switch ((Property) id) {
			case ID -> frame.id();
			case TIER -> words.wordOr("tier." + frame.tier().word(), frame.tier().word()); //$NON-NLS-1$
			case ROLE -> words.word("role." + frame.role().name()); //$NON-NLS-1$
			case LOCKED -> new Choice(frame.role() == FrameRole.PLACED);
			case X -> frame.x();
			case Y -> frame.y();
			case WIDTH -> frame.width();
			case HEIGHT -> frame.height();
		};
	}

	@Override
	public boolean isPropertySet(Object id) {
		return frame.role() == FrameRole.PLACED;
	}

	@Override
	protected Command change(Object id, Object value) {
		return FrameTier.of(session.design(), frame.id()).map(tier -> change((Property) id, value, tier))
			.orElse(UnexecutableCommand.INSTANCE);
	}

	private Command change(Property property, Object value, FrameTier tier) {
		if (property == Property.LOCKED) {
			return Boolean.TRUE.equals(value) ? tier.lock() : tier.release();
		}
		Length length = Objects.requireNonNull((Length) value);
		return switch (property) {
			case X -> tier.move(frame, Outline.ofSize(length, frame.y(), frame.width(), frame.height()));
			case Y -> tier.move(frame, Outline.ofSize(frame.x(), length, frame.width(), frame.height()));
			case WIDTH -> tier.size(frame, Outline.ofSize(frame.x(), frame.y(), length, frame.height()));
			case HEIGHT -> tier.size(frame, Outline.ofSize(frame.x(), frame.y(), frame.width(), length));
			default -> UnexecutableCommand.INSTANCE;
		};
	}

	private PropertyDescriptor descriptor(Property property) {
		PropertyDescriptor descriptor = switch (property) {
			case LOCKED -> new ChoiceDescriptor(property, words.word(property.word), new Choices(List.of(true, false),
				value -> words.word(Boolean.TRUE.equals(value) ? "yes" : "no"))); //$NON-NLS-1$ //$NON-NLS-2$
			case X, Y -> length(property, LengthText.Range.ZERO_OR_MORE);
			case WIDTH, HEIGHT -> length(property, LengthText.Range.ABOVE_ZERO);
			default -> new PropertyDescriptor(property, words.word(property.word));
		};
		descriptor.setCategory(words.word("group." + property.group)); //$NON-NLS-1$
		return descriptor;
	}

	/** A frame on a slope can't be placed by hand: its lengths are only shown. */
	private PropertyDescriptor length(Property property, LengthText.Range range) {
		LengthText text = new LengthText(session.units(), range);
		if (!frame.isRaked()) {
			return new TextValueDescriptor<>(property, words.word(property.word), text, true);
		}
		PropertyDescriptor shown = new PropertyDescriptor(property, words.word(property.word));
		shown.setLabelProvider(LabelProvider.createTextProvider(value -> text.shown((Length) value)));
		return shown;
	}
}
