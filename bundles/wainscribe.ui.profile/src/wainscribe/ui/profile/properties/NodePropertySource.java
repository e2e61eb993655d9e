// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile.properties;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.emf.common.command.Command;
import org.eclipse.ui.views.properties.IPropertyDescriptor;
import org.eclipse.ui.views.properties.PropertyDescriptor;

import wainscribe.model.length.Length;
import wainscribe.profile.section.ArcSegment;
import wainscribe.profile.section.SectionEdit;
import wainscribe.profile.section.SectionPoint;
import wainscribe.profile.section.Segment;
import wainscribe.ui.profile.Messages;
import wainscribe.ui.profile.desk.NodeKey;
import wainscribe.ui.profile.desk.SectionNodes;
import wainscribe.ui.profile.session.ProfileSession;
import wainscribe.ui.profile.words.NodeWords;
import wainscribe.ui.properties.CommandPropertySource;
import wainscribe.ui.properties.LengthText;
import wainscribe.ui.properties.LengthText.Range;
import wainscribe.ui.properties.TextValueDescriptor;

/** Coordinates of a point or a handle; of a segment its kind, its length, and the rise and radius of an arc. */
final class NodePropertySource extends CommandPropertySource {

	/** The properties. */
	private enum Property {
		UP, OUT, KIND, PART, LENGTH, RISE, RADIUS
	}

	private final ProfileSession session;
	private final NodeKey key;

	NodePropertySource(ProfileSession session, NodeKey key) {
		super(session.history());
		this.session = session;
		this.key = key;
	}

	@Override
	public IPropertyDescriptor[] getPropertyDescriptors() {
		List<PropertyDescriptor> all = new ArrayList<>();
		if (key instanceof NodeKey.OfSegment) {
			all.add(new PropertyDescriptor(Property.KIND, Messages.NodePropertySource_Kind));
			all.add(new PropertyDescriptor(Property.PART, Messages.NodePropertySource_Part));
			all.add(new PropertyDescriptor(Property.LENGTH, Messages.NodePropertySource_Length));
			if (segment() instanceof ArcSegment) {
				all.add(length(Property.RISE, Messages.NodePropertySource_Rise));
				all.add(new PropertyDescriptor(Property.RADIUS, Messages.NodePropertySource_Radius));
			}
		} else {
			all.add(length(Property.UP, Messages.NodePropertySource_Up));
			all.add(length(Property.OUT, Messages.NodePropertySource_Out));
		}
		all.forEach(descriptor -> descriptor.setCategory(Messages.NodePropertySource_Place));
		return all.toArray(IPropertyDescriptor[]::new);
	}

	@Override
	public Object getPropertyValue(Object id) {
		return switch ((Property) id) {
			case UP -> place() == null ? null : place().x();
			case OUT -> place() == null ? null : place().y();
			case KIND -> segment() == null ? null : NodeWords.kind(segment());
			case PART -> nodes().isBack(((NodeKey.OfSegment) key).segment()) ? Messages.NodePropertySource_Back : Messages.NodePropertySource_Face;
			case LENGTH -> segment() == null ? null : NodeWords.measured(segment().lengthMillimetres(), session.units());
			case RISE -> segment() instanceof ArcSegment arc ? arc.rise() : null;
			case RADIUS -> segment() instanceof ArcSegment arc ? NodeWords.measured(arc.radius(), session.units()) : null;
		};
	}

	@Override
	public boolean isPropertySet(Object id) {
		return true;
	}

	@Override
	protected Command change(Object id, Object value) {
		if (!(value instanceof Length length) || place() == null) {
			return session.changing("", session.draft()); //$NON-NLS-1$
		}
		return switch ((Property) id) {
			case UP -> moved(new SectionPoint(length, place().y()));
			case OUT -> moved(new SectionPoint(place().x(), length));
			case RISE -> session.drawing(Messages.SectionSteps_Arc,
					new SectionEdit(session.draft().section()).turnToArc(((NodeKey.OfSegment) key).segment(), length));
			default -> session.changing("", session.draft()); //$NON-NLS-1$
		};
	}

	private Command moved(SectionPoint to) {
		return session.drawing(Messages.SectionSteps_Place, nodes().placed(key, to));
	}

	private SectionNodes nodes() {
		return new SectionNodes(session.draft().section());
	}

	/** Returns where it is; null when it is gone. */
	private SectionPoint place() {
		return nodes().placeOf(key).orElse(null);
	}

	/** Returns the segment; null when it is gone or the node is none. */
	private Segment segment() {
		return key instanceof NodeKey.OfSegment(int number) ? nodes().segment(number).orElse(null) : null;
	}

	private PropertyDescriptor length(Property property, String name) {
		return new TextValueDescriptor<>(property, name, new LengthText(session.units(), Range.ANY), true);
	}
}
