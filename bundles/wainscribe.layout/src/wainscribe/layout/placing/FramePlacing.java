// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.placing;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

import org.eclipse.osgi.util.NLS;

import wainscribe.layout.site.ThingRole;
import wainscribe.model.Box;
import wainscribe.model.Fixture;
import wainscribe.model.Opening;
import wainscribe.model.Placed;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.model.length.LengthFormat;
import wainscribe.model.length.LengthUnit;
import wainscribe.model.outline.Outline;
import wainscribe.model.outline.Outlines;
import wainscribe.model.outline.WallShape;

/**
 * Frames placed by hand on one wall, carried over to another: where they would stand there, and what bars them. They keep
 * their sizes and their distances from each other, so that both walls read alike.
 *
 * @param wall    the wall they are carried to
 * @param places  their outlines there, in the order in which they were given
 * @param refusal a plain sentence that says what bars them; empty when they fit
 */
public record FramePlacing(Wall wall, List<Outline> places, String refusal) {

	/** Refuses nulls and copies the list. */
	public FramePlacing {
		Objects.requireNonNull(wall);
		Objects.requireNonNull(refusal);
		places = List.copyOf(places);
	}

	/**
	 * Carries frames over.
	 *
	 * @param frames outlines on their own wall, at least one
	 * @param from   their own wall
	 * @param to     the wall they are carried to
	 * @param start  from where they are measured there
	 * @param face   face width of the moulding; a plate inside the field of a frame is not in its way
	 * @param unit   in which a refusal writes lengths
	 */
	public static FramePlacing of(List<Outline> frames, Wall from, Wall to, Start start, Length face, LengthUnit unit) {
		WallShape there = WallShape.of(to);
		Length shift = start == Start.LEFT_END ? Length.ZERO : there.length().minus(WallShape.of(from).length()).dividedBy(2);
		List<Outline> places = frames.stream()
				.map(frame -> Outline.ofSize(frame.x0().plus(shift), frame.y0(), frame.width(), frame.height())).toList();
		String refusal = outside(places, to, there, unit)
				.or(() -> places.stream().flatMap(place -> met(place, to, face).stream()).findFirst()
						.map(met -> NLS.bind(Messages.FramePlacing_InTheWay, called(met), name(to))))
				.orElse(""); //$NON-NLS-1$
		return new FramePlacing(to, places, refusal);
	}

	/** Tells whether nothing bars the frames. */
	public boolean fits() {
		return refusal.isEmpty();
	}

	private static Optional<String> outside(List<Outline> places, Wall wall, WallShape shape, LengthUnit unit) {
		if (shape.isFloorSloped()) {
			return Optional.of(NLS.bind(Messages.FramePlacing_Climbs, name(wall)));
		}
		Length left = places.stream().map(Outline::x0).min(Length::compareTo).orElse(Length.ZERO);
		Length right = places.stream().map(Outline::x1).max(Length::compareTo).orElse(Length.ZERO);
		if (left.signum() < 0 || right.isMoreThan(shape.length())) {
			return Optional.of(NLS.bind(Messages.FramePlacing_TooLong, new Object[] { LengthFormat.asShown(left, unit),
					LengthFormat.asShown(right, unit), name(wall), LengthFormat.asShown(shape.length(), unit) }));
		}
		for (Outline place : places) {
			Length ceiling = shape.ceilingAt(place.x0()).min(shape.ceilingAt(place.x1()));
			if (ceiling.signum() > 0 && place.y1().isMoreThan(ceiling)) {
				return Optional.of(NLS.bind(Messages.FramePlacing_TooHigh, new Object[] { LengthFormat.asShown(place.y1(), unit),
						name(wall), LengthFormat.asShown(ceiling, unit) }));
			}
			if (place.y0().signum() < 0) {
				return Optional.of(NLS.bind(Messages.FramePlacing_TooLow, LengthFormat.asShown(place.y0(), unit), name(wall)));
			}
		}
		return Optional.empty();
	}

	private static Optional<Placed> met(Outline frame, Wall wall, Length face) {
		List<Placed> met = new ArrayList<>();
		for (Opening opening : wall.getOpenings()) {
			if (Outlines.cased(opening).overlaps(frame)) {
				met.add(opening);
			}
		}
		wall.getFixtures().stream().filter(fixture -> isMet(fixture, ThingRole.of(fixture), frame, face)).forEach(met::add);
		wall.getBoxes().stream().filter(box -> isMet(box, ThingRole.of(box), frame, face)).forEach(met::add);
		return met.stream().findFirst();
	}

	/** A large thing is met by the whole frame, a small one only by its moulding. */
	private static boolean isMet(Placed thing, ThingRole role, Outline frame, Length face) {
		if (role == ThingRole.BLOCKER) {
			return Outlines.of(thing).overlaps(frame);
		}
		Outline clear = Outlines.of(thing).grown(new Length(role.margin()));
		boolean inField = face.times(2).isLessThan(frame.width().min(frame.height())) && new Outline(frame.x0().plus(face),
				frame.y0().plus(face), frame.x1().minus(face), frame.y1().minus(face)).contains(clear);
		return role.isIsland() && clear.overlaps(frame) && !inField;
	}

	private static String called(Placed thing) {
		if (thing.getName() != null && !thing.getName().isBlank()) {
			return thing.getName();
		}
		return switch (thing) {
			case Opening opening -> opening.getKind().getLiteral();
			case Fixture fixture -> String.valueOf(fixture.getType());
			case Box box -> box.getType().getLiteral();
			default -> thing.eClass().getName();
		};
	}

	private static String name(Wall wall) {
		return Objects.requireNonNullElse(wall.getName(), ""); //$NON-NLS-1$
	}
}
