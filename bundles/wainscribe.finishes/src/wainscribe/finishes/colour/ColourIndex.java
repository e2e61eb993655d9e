// SPDX-License-Identifier: EPL-2.0
package wainscribe.finishes.colour;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/**
 * Finds the colours of a list nearest to a colour by CIEDE2000, exactly and fast.
 * <p>
 * The list is split into boxes of CIELAB in halves along the widest side (Bentley 1975, k-d tree); boxes are opened in the order of
 * {@link LabBox#floor}, until no floor lies below what is found. CIEDE2000 is no metric, hence a floor of its own. Immutable.
 */
public final class ColourIndex {

	private static final int LEAF = 12;

	private final Lab[] colours;
	private final Node root;

	/** Sorts the colours; equal distances are answered in the order of this list. */
	public ColourIndex(List<Lab> colours) {
		this.colours = colours.toArray(Lab[]::new);
		root = colours.isEmpty() ? null : node(IntStream.range(0, this.colours.length).toArray());
	}

	/** Returns the nearest colours, the nearest first, at most so many. */
	public List<ColourMatch> nearest(Lab wanted, int count) {
		if (root == null || count < 1) {
			return List.of();
		}
		PriorityQueue<ColourMatch> found = new PriorityQueue<>(ORDER.reversed());
		PriorityQueue<Opening> open = new PriorityQueue<>(Comparator.comparingDouble(Opening::floor));
		open.add(new Opening(root.box().floor(wanted), root));
		while (!open.isEmpty() && (found.size() < count || open.peek().floor() <= found.peek().difference() + ROUNDING)) {
			switch (open.poll().node()) {
			case Leaf leaf -> {
				for (int index : leaf.indices()) {
					found.add(new ColourMatch(index, ColourDifference.ciede2000(wanted, colours[index])));
					if (found.size() > count) {
						found.poll();
					}
				}
			}
			case Split split -> {
				open.add(new Opening(split.low().box().floor(wanted), split.low()));
				open.add(new Opening(split.high().box().floor(wanted), split.high()));
			}
			}
		}
		List<ColourMatch> sorted = new ArrayList<>(found);
		sorted.sort(ORDER);
		return List.copyOf(sorted);
	}

	private static final Comparator<ColourMatch> ORDER = Comparator.comparingDouble(ColourMatch::difference)
			.thenComparingInt(ColourMatch::index);
	/** A floor may round above a distance that equals it. */
	private static final double ROUNDING = 1e-9;

	private Node node(int[] indices) {
		LabBox box = box(indices);
		if (indices.length <= LEAF) {
			return new Leaf(box, indices);
		}
		Comparator<Integer> along = Comparator.comparingDouble(widest(box));
		int[] sorted = IntStream.of(indices).boxed().sorted(along.thenComparing(Comparator.naturalOrder())).mapToInt(Integer::intValue).toArray();
		int half = sorted.length / 2;
		return new Split(box, node(Arrays.copyOfRange(sorted, 0, half)), node(Arrays.copyOfRange(sorted, half, sorted.length)));
	}

	private ToDoubleFunction<Integer> widest(LabBox box) {
		double l = box.maxL() - box.minL();
		double a = box.maxA() - box.minA();
		double b = box.maxB() - box.minB();
		if (l >= a && l >= b) {
			return index -> colours[index].lightness();
		}
		return a >= b ? index -> colours[index].a() : index -> colours[index].b();
	}

	private LabBox box(int[] indices) {
		double[] low = { Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY };
		double[] high = { Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY };
		for (int index : indices) {
			Lab colour = colours[index];
			double[] values = { colour.lightness(), colour.a(), colour.b() };
			for (int i = 0; i < 3; i++) {
				low[i] = Math.min(low[i], values[i]);
				high[i] = Math.max(high[i], values[i]);
			}
		}
		return new LabBox(low[0], high[0], low[1], high[1], low[2], high[2]);
	}

	private record Opening(double floor, Node node) {
	}

	private sealed interface Node {
		LabBox box();
	}

	private record Leaf(LabBox box, int[] indices) implements Node {
	}

	private record Split(LabBox box, Node low, Node high) implements Node {
	}
}
