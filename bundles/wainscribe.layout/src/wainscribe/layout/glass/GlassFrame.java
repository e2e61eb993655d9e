// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.glass;

import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

import wainscribe.layout.EffectiveBrief;
import wainscribe.layout.MouldingSection;
import wainscribe.model.Brief;
import wainscribe.model.Fixture;
import wainscribe.model.FixtureType;
import wainscribe.model.Home;
import wainscribe.model.Room;
import wainscribe.model.length.Length;
import wainscribe.model.length.LengthUnit;
import wainscribe.model.outline.Outline;
import wainscribe.model.outline.Outlines;

/**
 * The frame round a mirror that is on the wall: its moulding laps over the measured glass and is rebated, or packed out
 * from the wall, so that the glass stands in it with some play. Heights are above the floor line, as the survey measures.
 *
 * @param mirror    the mirror
 * @param glass     the measured glass
 * @param lap       how far the moulding covers the glass on each side
 * @param clearance play between the edge of the glass and the rebate
 * @param section   the moulding
 */
public record GlassFrame(Fixture mirror, Outline glass, Length lap, Length clearance, MouldingSection section) {

	/** Refuses nulls. */
	public GlassFrame {
		Objects.requireNonNull(mirror);
		Objects.requireNonNull(glass);
		Objects.requireNonNull(lap);
		Objects.requireNonNull(clearance);
		Objects.requireNonNull(section);
	}

	/**
	 * Returns the frame of a fixture: of a mirror whose {@code framed} is decided, with sizes above zero.
	 * <p>
	 * Unless decided the moulding laps 3/8 in or 10 mm over the glass, with 1/8 in or 3 mm of play; common practice.
	 *
	 * @param home    the home, whose brief holds where the room's is silent
	 * @param room    the room
	 * @param brief   its resolved brief
	 * @param fixture any fixture of the room
	 */
	public static Optional<GlassFrame> of(Home home, Room room, EffectiveBrief brief, Fixture fixture) {
		if (fixture.getType() != FixtureType.MIRROR || !Boolean.TRUE.equals(fixture.getFramed()) || !isPositive(fixture.getWidth())
				|| !isPositive(fixture.getHeight())) {
			return Optional.empty();
		}
		boolean inches = brief.units() == LengthUnit.INCH;
		Length lap = first(home, room, Brief::getGlassLap)
				.orElse(inches ? Length.ofInches(3, 8) : Length.ofMillimetres(10));
		Length clearance = first(home, room, Brief::getGlassClearance)
				.orElse(inches ? Length.ofInches(1, 8) : Length.ofMillimetres(3));
		return Optional.of(new GlassFrame(fixture, Outlines.of(fixture), lap, clearance, brief.frame()));
	}

	/**
	 * Returns what a fixture covers on its wall: a mirror that gets a frame with that frame, all else as measured. Heights are
	 * above the floor line.
	 *
	 * @param home    the home, whose brief holds where the room's is silent
	 * @param room    the room
	 * @param brief   its resolved brief
	 * @param fixture any fixture of the room
	 */
	public static Outline covered(Home home, Room room, EffectiveBrief brief, Fixture fixture) {
		return of(home, room, brief, fixture).map(GlassFrame::whole).orElseGet(() -> Outlines.of(fixture));
	}

	private static boolean isPositive(Length length) {
		return length != null && length.signum() > 0;
	}

	private static Optional<Length> first(Home home, Room room, Function<Brief, Length> decision) {
		return Stream.of(Optional.ofNullable(room.getBrief()), Optional.ofNullable(home.getBrief())).flatMap(Optional::stream)
				.map(decision).filter(Objects::nonNull).findFirst();
	}

	/** Returns the outer edge of the moulding. */
	public Outline outer() {
		return glass.grown(section.face().minus(lap));
	}

	/** Returns what glass and moulding cover together: the outer edge, or the glass where the moulding is all on it. */
	public Outline whole() {
		return glass.grown(section.face().minus(lap).max(Length.ZERO));
	}

	/** Returns how wide the rebate is: lap and play. */
	public Length rebateWidth() {
		return lap.plus(clearance);
	}

	/** Tells whether the moulding reaches from the glass to the wall: it is wider than the rebate. */
	public boolean reachesTheWall() {
		return section.face().isMoreThan(rebateWidth());
	}

	/** Tells whether glass stays to be seen inside the frame. */
	public boolean leavesSight() {
		return glass.width().isMoreThan(lap.times(2)) && glass.height().isMoreThan(lap.times(2));
	}
}
