// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout;

import java.util.Objects;

import wainscribe.layout.brief.BriefResolver;
import wainscribe.layout.pattern.PatternCatalogue;
import wainscribe.layout.pattern.PatternDescriptor;
import wainscribe.layout.pattern.WallPattern;
import wainscribe.layout.site.RoomAssembly;
import wainscribe.layout.site.RoomSite;
import wainscribe.model.Home;
import wainscribe.model.Room;
import wainscribe.profile.ProfileCatalogue;

/**
 * Designs rooms by the patterns of a catalogue: the best layout of the whole room, proved.
 * <p>
 * The best is by the nine terms of {@link Objective}, in their order, over all numbers of frames in all runs, all ways to make
 * islands barriers and to give up window anchors, all places of the module, and these gaps: the one that was asked for; else,
 * in a home measured in millimetres, every whole millimetre from 70 to 90, and in one measured in inches every 1/16 in from
 * 2 3/4 to 3 1/2; and if a frameable stretch stays plain at all of them, every whole millimetre from 50 to 190, or every
 * 1/16 in from 2 to 7 1/2. The gap is measured against 80 mm or 3 in. Of layouts equal in all nine terms the one with fewer
 * frames on the earliest wall that differs is taken, then the smaller gap. {@link RoomLayout#proved()} is false only in rooms
 * of more than some hundred things, where counts are no longer kept exactly.
 * <p>
 * Keeps no state and changes nothing, so one instance serves all rooms and threads. A room that can be read never makes it
 * throw: what cannot be done is said in {@link RoomLayout#infeasible()} and the best that is left is still laid out.
 */
public final class PatternRoomDesigner implements RoomDesigner {

	private final PatternCatalogue patterns;
	private final ProfileCatalogue profiles;
	private final boolean advised;

	/**
	 * Creates a designer.
	 *
	 * @param patterns the patterns that briefs refer to
	 * @param profiles the profiles that briefs refer to
	 */
	public PatternRoomDesigner(PatternCatalogue patterns, ProfileCatalogue profiles) {
		this(patterns, profiles, true);
	}

	private PatternRoomDesigner(PatternCatalogue patterns, ProfileCatalogue profiles, boolean advised) {
		this.patterns = Objects.requireNonNull(patterns);
		this.profiles = Objects.requireNonNull(profiles);
		this.advised = advised;
	}

	/**
	 * Returns a designer that finds the same layouts but leaves out alternatives and nearest requests, for use while something
	 * is dragged.
	 */
	public RoomDesigner withoutAdvice() {
		return new PatternRoomDesigner(patterns, profiles, false);
	}

	@Override
	public EffectiveBrief brief(Home home, Room room) {
		return new BriefResolver(profiles).resolve(home, room);
	}

	@Override
	public RoomDesign design(Home home, Room room, EffectiveBrief brief) {
		PatternDescriptor pattern = patterns.find(brief.pattern())
				.orElseThrow(() -> new IllegalArgumentException("pattern \"" + brief.pattern() + "\": expected one of " //$NON-NLS-1$ //$NON-NLS-2$
						+ String.join(", ", patterns.ids()))); //$NON-NLS-1$
		WallPattern treatment = pattern.pattern();
		EffectiveBrief held = treatment.strips().isPresent() ? new BriefResolver(profiles).withStrips(brief, home, room) : brief;
		RoomSite site = RoomSite.of(home, room, held, treatment);
		return new RoomDesign(home, room, held, new RoomAssembly(site).layout(advised));
	}
}
