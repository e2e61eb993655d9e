// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import wainscribe.model.Material;
import wainscribe.model.Room;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;

/**
 * The derived layout of a room; never stored.
 *
 * @param room         the room it was computed for
 * @param pattern      id of the wall pattern
 * @param material     what the mouldings are made of
 * @param gap          clear distance between frames and at the ends of runs; for strips the clear field between them in the
 *                     run that has most
 * @param gapY         clear distance above and below frames; for strips the clear height of a row of fields, zero where they
 *                     reach from edge to edge
 * @param railBand     the rail, null for a pattern without one
 * @param profile      the moulding of frames or strips
 * @param walls        one for each wall in walking order, also where a wall stays empty
 * @param objective    how good it is
 * @param proved       whether no better one exists
 * @param alternatives others worth showing
 * @param infeasible   stretches that stay plain although they could take a frame, and refused rails; empty when all is well
 */
public record RoomLayout(Room room, String pattern, Material material, Length gap, Length gapY, RailBand railBand,
		MouldingSection profile, List<WallLayout> walls, Objective objective, boolean proved,
		List<Alternative> alternatives, List<PlainStretch> infeasible) {

	/** Copies the lists. */
	public RoomLayout {
		walls = List.copyOf(walls);
		alternatives = List.copyOf(alternatives);
		infeasible = List.copyOf(infeasible);
	}

	/** Returns the rail, if the pattern has one. */
	public Optional<RailBand> rail() {
		return Optional.ofNullable(railBand);
	}

	/** Returns what is on one wall. */
	public Optional<WallLayout> of(Wall wall) {
		return walls.stream().filter(layout -> layout.wall() == wall).findFirst();
	}

	/** Returns all frames of the room. */
	public Stream<FrameOutline> frames() {
		return walls.stream().flatMap(WallLayout::frames);
	}

	/** Returns all strips of the room. */
	public Stream<StripOutline> strips() {
		return walls.stream().flatMap(WallLayout::strips);
	}

	/** Returns all frames and strips of the room. */
	public Stream<Member> members() {
		return walls.stream().flatMap(WallLayout::members);
	}
}
