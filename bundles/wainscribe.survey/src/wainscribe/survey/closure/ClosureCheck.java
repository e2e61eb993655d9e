// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey.closure;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

import org.eclipse.osgi.util.NLS;

import wainscribe.model.Room;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.model.length.LengthFormat;
import wainscribe.model.length.LengthUnit;

/**
 * Checks whether the measured walls of a room close.
 * <p>
 * Limits (common practice for tape and bevel): doubtful above 13 mm + 0.1 % of the perimeter; refused above 5 % of it, or
 * when the inside angles miss (n - 2) x 180 by more than 5 degrees.
 */
public final class ClosureCheck {

	private static final double SLACK = 13;
	private static final double DOUBTFUL_SHARE = 0.001;
	private static final double REFUSED_SHARE = 0.05;
	private static final double REFUSED_DEGREES = 5;
	private static final int MOST_OTHERS = 3;
	private static final double SQUARE_MILLIMETRES_PER_SQUARE_METRE = 1e6;

	private final LengthUnit units;
	private final CornerDoubts corners;

	/**
	 * Creates a check.
	 *
	 * @param units unit in which messages tell lengths
	 */
	public ClosureCheck(LengthUnit units) {
		this.units = Objects.requireNonNull(units);
		this.corners = new CornerDoubts(units);
	}

	/**
	 * Checks a room; one with fewer than three walls or marked open is only measured.
	 *
	 * @param room every wall has a length
	 */
	public RoomClosure check(Room room) {
		Length perimeter = room.getWalls().stream().map(Wall::getLength).reduce(Length.ZERO, Length::plus);
		List<Doubt> doubts = new ArrayList<>(corners.of(room));
		int count = room.getWalls().size();
		if (count < 3 || Boolean.TRUE.equals(room.getOpen())) {
			return new RoomClosure(room.getName(), RoomClosure.Verdict.NOT_CHECKED, null, null, perimeter, null, count, null, doubts);
		}
		RoomTraverse traverse = RoomTraverse.of(room);
		Traverse walk = traverse.balanced();
		RoomClosure.Verdict verdict = verdict(traverse, walk);
		String likeliest = null;
		if (Math.abs(traverse.angleMiss()) > REFUSED_DEGREES) {
			Doubt doubt = angleDoubt(room, traverse);
			likeliest = doubt.wall();
			doubts.addFirst(doubt);
		} else if (verdict != RoomClosure.Verdict.CLOSES) {
			Doubt doubt = lengthDoubt(room, traverse, walk);
			likeliest = doubt.wall();
			doubts.addFirst(doubt);
		}
		if (verdict != RoomClosure.Verdict.REFUSED) {
			doubts.addAll(diagonalDoubts(room, traverse, walk));
		}
		return new RoomClosure(room.getName(), verdict, decimal(walk.misclosure(), 3), decimal(traverse.angleMiss(), 4), perimeter,
				decimal(walk.area() / SQUARE_MILLIMETRES_PER_SQUARE_METRE, 4), count, likeliest, doubts);
	}

	private static RoomClosure.Verdict verdict(RoomTraverse traverse, Traverse walk) {
		double misclosure = walk.misclosure();
		double perimeter = walk.perimeter();
		if (Math.abs(traverse.angleMiss()) > REFUSED_DEGREES || misclosure > REFUSED_SHARE * perimeter) {
			return RoomClosure.Verdict.REFUSED;
		}
		return misclosure > limit(perimeter) ? RoomClosure.Verdict.DOUBTFUL : RoomClosure.Verdict.CLOSES;
	}

	private static double limit(double perimeter) {
		return SLACK + DOUBTFUL_SHARE * perimeter;
	}

	/** Blames the corner that, were it alone wrong, lets the walls close best. */
	private static Doubt angleDoubt(Room room, RoomTraverse traverse) {
		int corner = IntStream.range(0, traverse.size()).boxed()
				.min(Comparator.comparingDouble(each -> traverse.withAngleBlame(each).misclosure())).orElseThrow();
		Wall wall = room.getWalls().get(corner);
		double sum = (traverse.size() - 2) * 180.0;
		return new Doubt(wall.getName(), "", //$NON-NLS-1$
				NLS.bind(Messages.ClosureCheck_Angles,
						new Object[] { room.getName(), plain(sum), plain(sum + traverse.angleMiss()), wall.getName() }), true);
	}

	private Doubt lengthDoubt(Room room, RoomTraverse traverse, Traverse walk) {
		List<WrongWall> guesses = WrongWall.likeliest(walk, traverse.diagonals());
		String miss = shown(walk.misclosure());
		if (guesses.isEmpty()) {
			String longest = room.getWalls().stream().max(Comparator.comparing(Wall::getLength)).orElseThrow().getName();
			return new Doubt(longest, "", //$NON-NLS-1$
					NLS.bind(Messages.ClosureCheck_Longest, new Object[] { room.getName(), miss, longest }), false);
		}
		WrongWall best = guesses.getFirst();
		String name = room.getWalls().get(best.wall()).getName();
		String others = guesses.stream().skip(1).limit(MOST_OTHERS).map(guess -> room.getWalls().get(guess.wall()).getName())
				.collect(Collectors.joining(Messages.ClosureCheck_Or));
		String message = others.isEmpty() ? Messages.ClosureCheck_Likeliest : Messages.ClosureCheck_LikeliestOf;
		return new Doubt(name, "", //$NON-NLS-1$
				NLS.bind(message, new Object[] { room.getName(), miss, name, shown(best.length()), others }), false);
	}

	private List<Doubt> diagonalDoubts(Room room, RoomTraverse traverse, Traverse walk) {
		List<Traverse.Point> adjusted = walk.adjustedCorners();
		List<Doubt> doubts = new ArrayList<>();
		for (RoomTraverse.Span diagonal : traverse.diagonals()) {
			double computed = adjusted.get(diagonal.from()).to(adjusted.get(diagonal.to()));
			if (Math.abs(computed - diagonal.distance()) > limit(walk.perimeter())) {
				String from = room.getWalls().get(diagonal.from()).getName();
				String to = room.getWalls().get(diagonal.to()).getName();
				String name = diagonal.source().getName() == null ? "diagonal" : diagonal.source().getName(); //$NON-NLS-1$
				doubts.add(new Doubt(from, name,
						NLS.bind(Messages.ClosureCheck_Diagonal,
								new Object[] { from, to, shown(diagonal.distance()), shown(computed) }), false));
			}
		}
		return doubts;
	}

	private String shown(double millimetres) {
		return LengthFormat.asTapeMark(new Length(Math.round(millimetres * Length.UNITS_PER_MILLIMETRE)), units);
	}

	private static String plain(double degrees) {
		BigDecimal value = decimal(degrees, 1).stripTrailingZeros();
		return (value.scale() < 0 ? value.setScale(0) : value).toPlainString();
	}

	private static BigDecimal decimal(double value, int places) {
		return BigDecimal.valueOf(value).setScale(places, RoundingMode.HALF_UP);
	}
}
