// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.properties;

import static java.util.Objects.requireNonNull;

import java.util.Optional;

import org.eclipse.emf.common.command.CommandStack;
import org.eclipse.ui.views.properties.IPropertySource;

import wainscribe.layout.FrameOutline;
import wainscribe.layout.RailBand;
import wainscribe.layout.pattern.PatternCatalogue;
import wainscribe.model.Axis;
import wainscribe.model.Element;
import wainscribe.model.Home;
import wainscribe.model.Room;
import wainscribe.model.length.LengthUnit;
import wainscribe.profile.ProfileCatalogue;
import wainscribe.ui.session.HomeSession;
import wainscribe.ui.session.RoomSession;

/**
 * Makes the properties of things that can be selected. Every edit is one step of the undo history of the room, or of the home
 * where the thing belongs to no room.
 */
public final class PropertySources {

	private final FeatureWords words = new FeatureWords();
	private final PatternCatalogue patterns;
	private final ProfileCatalogue profiles;

	/**
	 * Creates a maker of properties.
	 *
	 * @param patterns the wall patterns that can be chosen
	 * @param profiles the trim profiles that can be chosen
	 */
	public PropertySources(PatternCatalogue patterns, ProfileCatalogue profiles) {
		this.patterns = requireNonNull(patterns);
		this.profiles = requireNonNull(profiles);
	}

	/**
	 * Makes the properties of something in a room.
	 *
	 * @param session the room
	 * @param thing   the room, a wall, a surveyed thing, a coating, or a derived {@link FrameOutline} or {@link RailBand}
	 * @return its properties; empty for something that has none
	 */
	public Optional<IPropertySource> of(RoomSession session, Object thing) {
		requireNonNull(session);
		return Optional.ofNullable(switch (thing) {
			case Room room -> new RoomPropertySource(session, words, descriptors(session.units()));
			case FrameOutline frame -> new FramePropertySource(session, frame, words);
			case RailBand rail -> new RailPropertySource(session, rail, words);
			case Axis axis -> new AxisPropertySource(session, axis, words, descriptors(session.units()));
			case Home home -> of(session.homeSession());
			case Element element -> element(element, session.commandStack(), session.units());
			case null, default -> null;
		});
	}

	/** Makes the properties of a home. */
	public IPropertySource of(HomeSession session) {
		return new HomePropertySource(session, words, descriptors(session.units()));
	}

	private IPropertySource element(Element element, CommandStack history, LengthUnit units) {
		return new ElementPropertySource(element, history, words, descriptors(units));
	}

	private FeatureDescriptors descriptors(LengthUnit units) {
		return new FeatureDescriptors(words, units, new ChoicesOfBrief(patterns, profiles, words));
	}
}
