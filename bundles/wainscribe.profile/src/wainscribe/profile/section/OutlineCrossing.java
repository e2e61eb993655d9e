// SPDX-License-Identifier: EPL-2.0
package wainscribe.profile.section;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Finds where an outline crosses or touches itself. The outline is followed in chords no more than a hundredth of a
 * millimetre off; chords are swept along x, so that only those that overlap there are compared.
 */
final class OutlineCrossing {

	private static final double CHORD_TOLERANCE = 0.01;
	private static final double CLOSE = 1e-6;

	private final List<Chord> chords = new ArrayList<>();

	/** A straight piece of the outline: number in walking order, ends, and whether it starts at the end of the one before. */
	private record Chord(int number, Spot a, Spot b) {
		double left() {
			return Math.min(a.x(), b.x());
		}

		double right() {
			return Math.max(a.x(), b.x());
		}
	}

	OutlineCrossing(List<Segment> outline) {
		for (Segment segment : outline) {
			Spot from = segment.start().spot();
			for (Spot to : segment.chords(CHORD_TOLERANCE)) {
				if (from.distanceTo(to) > CLOSE) {
					chords.add(new Chord(chords.size(), from, to));
					from = to;
				}
			}
		}
	}

	/** Returns a point where the outline meets itself, the first along the wall; empty if it does not. */
	Optional<Spot> first() {
		List<Chord> sorted = chords.stream().sorted(Comparator.comparingDouble(Chord::left)).toList();
		for (int i = 0; i < sorted.size(); i++) {
			Chord one = sorted.get(i);
			for (int j = i + 1; j < sorted.size() && sorted.get(j).left() <= one.right() + CLOSE; j++) {
				Optional<Spot> met = meeting(one, sorted.get(j));
				if (met.isPresent()) {
					return met;
				}
			}
		}
		return Optional.empty();
	}

	private Optional<Spot> meeting(Chord one, Chord other) {
		if (Math.max(one.a.y(), one.b.y()) < Math.min(other.a.y(), other.b.y()) - CLOSE
				|| Math.max(other.a.y(), other.b.y()) < Math.min(one.a.y(), one.b.y()) - CLOSE) {
			return Optional.empty();
		}
		int apart = Math.abs(one.number - other.number);
		if (apart == 1 || apart == chords.size() - 1) {
			Chord first = apart == 1 == one.number < other.number ? one : other;
			return foldedBack(first, first == one ? other : one);
		}
		return crossing(one, other);
	}

	/** Neighbours share an end; they meet elsewhere only where the way turns back on itself. */
	private Optional<Spot> foldedBack(Chord before, Chord after) {
		if (before.b.distanceTo(after.a) > CLOSE) {
			return crossing(before, after);
		}
		Spot corner = before.b;
		double cross = turn(before.a, corner, after.b);
		double dot = (corner.x() - before.a.x()) * (after.b.x() - corner.x()) + (corner.y() - before.a.y()) * (after.b.y() - corner.y());
		double size = before.a.distanceTo(corner) * corner.distanceTo(after.b);
		return dot < 0 && Math.abs(cross) < CLOSE * size ? Optional.of(corner) : Optional.empty();
	}

	private static Optional<Spot> crossing(Chord one, Chord other) {
		double abc = turn(one.a, one.b, other.a);
		double abd = turn(one.a, one.b, other.b);
		double cda = turn(other.a, other.b, one.a);
		double cdb = turn(other.a, other.b, one.b);
		double tolerance = CLOSE * CLOSE;
		if (abc * abd < 0 && cda * cdb < 0 && Math.min(Math.abs(abc), Math.abs(abd)) > tolerance) {
			return Optional.of(one.a.towards(one.b, cda / (cda - cdb)));
		}
		for (Spot end : List.of(other.a, other.b)) {
			if (distance(one, end) < CLOSE) {
				return Optional.of(end);
			}
		}
		for (Spot end : List.of(one.a, one.b)) {
			if (distance(other, end) < CLOSE) {
				return Optional.of(end);
			}
		}
		return Optional.empty();
	}

	private static double distance(Chord chord, Spot spot) {
		double length = chord.a.distanceTo(chord.b);
		double dot = (spot.x() - chord.a.x()) * (chord.b.x() - chord.a.x()) + (spot.y() - chord.a.y()) * (chord.b.y() - chord.a.y());
		return spot.distanceTo(chord.a.towards(chord.b, Math.clamp(dot / (length * length), 0, 1)));
	}

	private static double turn(Spot a, Spot b, Spot c) {
		return (b.x() - a.x()) * (c.y() - a.y()) - (b.y() - a.y()) * (c.x() - a.x());
	}
}
