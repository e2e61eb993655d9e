// SPDX-License-Identifier: EPL-2.0
package wainscribe.commands;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;

import wainscribe.model.length.Length;
import wainscribe.model.outline.Outline;

/** How several things on a wall are brought in line with one of them, or spread between the outermost two. */
public enum Alignment {

	/** Left edges on one plumb line. */
	LEFT,
	/** Middles on one plumb line. */
	CENTRE,
	/** Right edges on one plumb line. */
	RIGHT,
	/** Upper edges on one level line. */
	TOP,
	/** Middles on one level line. */
	MIDDLE,
	/** Lower edges on one level line. */
	BOTTOM,
	/** Clear distances along the wall equal; the first and the last stay. */
	SPACE_ALONG,
	/** Clear distances up the wall equal; the lowest and the highest stay. */
	SPACE_UP;

	/** Tells whether things are moved along the wall: they must then be on one wall. */
	public boolean isAlong() {
		return this == LEFT || this == CENTRE || this == RIGHT || this == SPACE_ALONG;
	}

	/** Returns how many things it takes. */
	public int least() {
		return this == SPACE_ALONG || this == SPACE_UP ? 3 : 2;
	}

	/**
	 * Works out where things go.
	 *
	 * @param outlines  where they are, at least {@link #least()}
	 * @param reference index of the one that stays where it is; of no matter when they are spread
	 * @return where they go, in the same order, in the same sizes
	 */
	public List<Outline> arrange(List<Outline> outlines, int reference) {
		if (outlines.size() < least()) {
			throw new IllegalArgumentException("expected at least " + least() + " outlines"); //$NON-NLS-1$ //$NON-NLS-2$
		}
		Outline to = outlines.get(reference);
		return switch (this) {
			case LEFT -> along(outlines, each -> to.x0());
			case CENTRE -> along(outlines, each -> to.x0().plus(to.width().minus(each.width()).dividedBy(2)));
			case RIGHT -> along(outlines, each -> to.x1().minus(each.width()));
			case TOP -> up(outlines, each -> to.y1().minus(each.height()));
			case MIDDLE -> up(outlines, each -> to.y0().plus(to.height().minus(each.height()).dividedBy(2)));
			case BOTTOM -> up(outlines, each -> to.y0());
			case SPACE_ALONG -> spread(outlines, Outline::x0, Outline::width, (each, x) -> at(each, x, each.y0()));
			case SPACE_UP -> spread(outlines, Outline::y0, Outline::height, (each, y) -> at(each, each.x0(), y));
		};
	}

	private static List<Outline> along(List<Outline> outlines, Function<Outline, Length> x) {
		return outlines.stream().map(each -> at(each, x.apply(each), each.y0())).toList();
	}

	private static List<Outline> up(List<Outline> outlines, Function<Outline, Length> y) {
		return outlines.stream().map(each -> at(each, each.x0(), y.apply(each))).toList();
	}

	/** The rest of the division, less than a unit a gap, goes into the last gap: nothing is rounded twice. */
	private static List<Outline> spread(List<Outline> outlines, Function<Outline, Length> from, Function<Outline, Length> size,
			Shift shift) {
		List<Integer> order = IntStream.range(0, outlines.size()).boxed()
				.sorted(Comparator.comparing(index -> from.apply(outlines.get(index)))).toList();
		Outline first = outlines.get(order.getFirst());
		Outline last = outlines.get(order.getLast());
		Length free = from.apply(last).minus(from.apply(first)).minus(size.apply(first));
		for (int index : order.subList(1, order.size() - 1)) {
			free = free.minus(size.apply(outlines.get(index)));
		}
		List<Outline> spread = new ArrayList<>(outlines);
		Length taken = from.apply(first).plus(size.apply(first));
		for (int i = 1; i < order.size() - 1; i++) {
			Outline each = outlines.get(order.get(i));
			Length gaps = free.times(i).dividedBy(order.size() - 1);
			spread.set(order.get(i), shift.to(each, taken.plus(gaps)));
			taken = taken.plus(size.apply(each));
		}
		return spread;
	}

	private static Outline at(Outline outline, Length x, Length y) {
		return Outline.ofSize(x, y, outline.width(), outline.height());
	}

	/** Puts an outline elsewhere. */
	private interface Shift {
		Outline to(Outline outline, Length place);
	}
}
