// SPDX-License-Identifier: EPL-2.0
package wainscribe.profile.section;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import wainscribe.model.length.Length;

/**
 * A section of a moulding, drawn in its own plane, exact.
 * <p>
 * x runs along the wall from the lower edge upwards, y away from the wall. The face, which is seen and painted, goes from
 * the lower edge to the upper; the back goes on from there to where the face began: it lies against wall, floor or ceiling,
 * or is hollow behind a sprung moulding. The solid lies right of the way. A section that is being drawn may be open and
 * without a back; {@link SectionCheck} says what it lacks.
 *
 * @param face segments that are seen, each starting where the one before ends
 * @param back segments that are not, from the end of the face to its start; empty while none is drawn
 */
public record ProfileSection(List<Segment> face, List<Segment> back) {

	/** Nothing drawn yet. */
	public static final ProfileSection EMPTY = new ProfileSection(List.of(), List.of());

	/** How far a face may run back, in millimetres, before it counts as undercut. */
	private static final double UNDERCUT = 0.01;

	/** Copies the lists. */
	public ProfileSection {
		face = List.copyOf(face);
		back = List.copyOf(back);
	}

	/** Returns the whole outline, the face and then the back. */
	public List<Segment> outline() {
		return Stream.concat(face.stream(), back.stream()).toList();
	}

	/** Returns the developed length of the exposed face in millimetres: what takes paint. */
	public double girthMillimetres() {
		return face.stream().mapToDouble(Segment::lengthMillimetres).sum();
	}

	/** Returns the area of the closed section in square millimetres; exact for lines and curves up to floating point. */
	public double areaSquareMillimetres() {
		return Math.abs(sweptArea());
	}

	/** An open outline counts as closed by a straight line. */
	private double sweptArea() {
		List<Segment> outline = outline();
		if (outline.isEmpty()) {
			return 0;
		}
		double gap = outline.getLast().end().spot().cross(outline.getFirst().start().spot()) / 2;
		return gap + outline.stream().mapToDouble(Segment::sweptArea).sum();
	}

	/** Returns the smallest rectangle around the section; at the origin and without size if nothing is drawn. */
	public SectionBox box() {
		List<Spot> spots = outline().stream().flatMap(ProfileSection::outermost).toList();
		double lowX = spots.stream().mapToDouble(Spot::x).min().orElse(0);
		double lowY = spots.stream().mapToDouble(Spot::y).min().orElse(0);
		double highX = spots.stream().mapToDouble(Spot::x).max().orElse(0);
		double highY = spots.stream().mapToDouble(Spot::y).max().orElse(0);
		return new SectionBox(new Spot(lowX, lowY).nearest(), new Spot(highX, highY).nearest());
	}

	private static Stream<Spot> outermost(Segment segment) {
		return Stream.concat(Stream.of(segment.start().spot(), segment.end().spot()), segment.turns().stream().map(segment::at));
	}

	/**
	 * Tells whether an inside corner can be coped: the other piece is cut to the face of this one, so along the wall the face
	 * must never run back under itself.
	 */
	public boolean canBeCoped() {
		return undercut().isEmpty();
	}

	/** Returns where the face first runs back under itself; empty if nowhere. */
	public Optional<Spot> undercut() {
		double furthest = -Double.MAX_VALUE;
		for (Segment segment : clockwise().face) {
			for (double share : Stream.of(Stream.of(0.0), segment.turns().stream().sorted(), Stream.of(1.0)).flatMap(s -> s).toList()) {
				Spot spot = segment.at(share);
				if (spot.x() < furthest - UNDERCUT) {
					return Optional.of(spot);
				}
				furthest = Math.max(furthest, spot.x());
			}
		}
		return Optional.empty();
	}

	/** Returns the section as profiles keep it: its box at the origin, the solid right of the way. */
	public ProfileSection settled() {
		SectionPoint low = box().low();
		return clockwise().moved(low.x().negated(), low.y().negated());
	}

	private ProfileSection clockwise() {
		return sweptArea() > 0 ? reversed() : this;
	}

	/** Returns the section at another place. */
	public ProfileSection moved(Length dx, Length dy) {
		return new ProfileSection(face.stream().map(segment -> segment.moved(dx, dy)).toList(),
				back.stream().map(segment -> segment.moved(dx, dy)).toList());
	}

	/** Returns the section walked the other way: from the upper edge to the lower. */
	public ProfileSection reversed() {
		return new ProfileSection(reversed(face), reversed(back));
	}

	/** Returns the section upside down, at the same place and with the solid on the same side of the way. */
	public ProfileSection mirrored() {
		Length sum = box().low().x().plus(box().high().x());
		return new ProfileSection(face.stream().map(segment -> segment.mirrored(sum)).toList(),
				back.stream().map(segment -> segment.mirrored(sum)).toList()).reversed();
	}

	private static List<Segment> reversed(List<Segment> segments) {
		List<Segment> reversed = new ArrayList<>();
		segments.reversed().forEach(segment -> reversed.add(segment.reversed()));
		return reversed;
	}
}
