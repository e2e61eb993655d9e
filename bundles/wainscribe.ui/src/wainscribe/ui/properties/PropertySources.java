// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.properties;

import static java.util.Objects.requireNonNull;

import java.util.Optional;

import org.eclipse.ui.views.properties.IPropertySource;

import wainscribe.layout.FrameOutline;
import wainscribe.layout.RailBand;
import wainscribe.layout.StripOutline;
import wainscribe.layout.pattern.PatternCatalogue;
import wainscribe.model.Axis;
import wainscribe.model.Element;
import wainscribe.model.Home;
import wainscribe.model.Room;
import wainscribe.ui.session.HomeSession;
import wainscribe.ui.session.RoomSession;

/**
 * Makes the properties of things that can be selected. Every edit is one step of the undo history of the room, or of the home
 * where the thing belongs to no room.
 */
public final class PropertySources {

	private final FeatureWords words = new FeatureWords();
	private final PatternCatalogue patterns;

	/**
	 * Creates a maker of properties.
	 *
	 * @param patterns the wall patterns that can be chosen
	 */
	public PropertySources(PatternCatalogue patterns) {
		this.patterns = requireNonNull(patterns);
	}

	/**
	 * Makes the properties of something in a room.
	 *
	 * @param session the room
	 * @param thing   the room, a wall, a surveyed thing, a coating, or a derived {@link FrameOutline},
	 *                {@link StripOutline} or {@link RailBand}
	 * @return its properties; empty for something that has none
	 */
	public Optional<IPropertySource> of(RoomSession session, Object thing) {
		requireNonNull(session);
		return Optional.ofNullable(switch (thing) {
			case Room room -> new RoomPropertySource(session, words, descriptors(session));
			case FrameOutline frame -> new FramePropertySource(session, frame, words);
			case StripOutline strip -> new StripPropertySource(session, strip, words);
			case RailBand rail -> new RailPropertySource(session, rail, words);
			case Axis axis -> new AxisPropertySource(session, axis, words, descriptors(session));
			case Home home -> of(session.homeSession());
			case Element element -> new ElementPropertySource(element, session.commandStack(), words, descriptors(session));
			case null, default -> null;
		});
	}

	/** Makes the properties of a home. */
	public IPropertySource of(HomeSession session) {
		return new HomePropertySource(session, words, descriptors(session));
	}

	private FeatureDescriptors descriptors(RoomSession session) {
		return descriptors(session.homeSession());
	}

	/** The profiles of a home come and go while it is open. */
	private FeatureDescriptors descriptors(HomeSession session) {
		return new FeatureDescriptors(words, session.units(), new ChoicesOfBrief(patterns, session.profiles(), words));
	}
}
