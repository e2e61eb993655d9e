// SPDX-License-Identifier: EPL-2.0
package wainscribe.benchmarks.general;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.LongStream;

import org.chocosolver.solver.Model;
import org.chocosolver.solver.constraints.extension.Tuples;
import org.chocosolver.solver.variables.IntVar;

/**
 * A room at one gap as a model of the general solver.
 * <p>
 * Variables: for each tier the way it is parted; for each run of it the number of frames, its cost in the first five terms and
 * the number of its width in {@link #widths()}. Tables say which go together; sums give the terms of the room.
 */
final class GapModel {

	/** Algorithm for tables: compact tables, the solver's quickest. */
	static final String TABLE = "CT+";

	private static final int LOWER_ONLY = 0;
	private static final int UPPER_ONLY = 1;

	private final Model model = new Model();
	private final Digits digits;
	private final List<List<IntVar>> rankParts = new ArrayList<>();
	private final List<IntVar> counts = new ArrayList<>();
	private final List<IntVar> partings = new ArrayList<>();
	private final List<IntVar> numbers = new ArrayList<>();
	private final List<IntVar> widthIds = new ArrayList<>();
	private final Map<List<Long>, Integer> ids = new HashMap<>();
	private final List<long[]> widths = new ArrayList<>();
	private final IntVar[] rank;
	private final IntVar frames;

	/** A run of a tier: its variables. */
	private record Slot(IntVar key, IntVar number) {
	}

	GapModel(RoomAtGap room, Digits digits) {
		this.digits = digits;
		widths.add(new long[] { 0, 1 });
		IntStream.range(0, digits.count()).forEach(d -> rankParts.add(new ArrayList<>()));
		for (List<RoomAtGap.Tier> wall : room.walls()) {
			Map<List<Long>, Integer> matches = matches(wall);
			List<Slot> lower = List.of();
			for (int t = 0; t < wall.size(); t++) {
				List<Slot> slots = addTier(wall.get(t), matches, t == 0 ? LOWER_ONLY : UPPER_ONLY);
				if (t == 1) {
					match(lower, slots);
				}
				lower = slots;
			}
		}
		rank = rankParts.stream().map(this::total).toArray(IntVar[]::new);
		frames = total(counts);
	}

	private IntVar total(List<IntVar> parts) {
		int least = parts.stream().mapToInt(IntVar::getLB).sum();
		int most = parts.stream().mapToInt(IntVar::getUB).sum();
		IntVar total = model.intVar(least, most, true);
		model.sum(parts.toArray(IntVar[]::new), "=", total).post();
		return total;
	}

	/** Runs with the same ends in both tiers, with a number that is legal in both, get a key. */
	private static Map<List<Long>, Integer> matches(List<RoomAtGap.Tier> wall) {
		Map<List<Long>, Integer> keys = new HashMap<>();
		if (wall.size() == 2) {
			Set<List<Long>> below = new HashSet<>();
			wall.get(0).slots().forEach(rows -> rows.stream().filter(row -> row.filling().n() > 0)
					.forEach(row -> below.add(List.of(row.run()[0], row.run()[1], (long) row.filling().n()))));
			wall.get(1).slots().forEach(rows -> rows.stream().filter(row -> row.filling().n() > 0)
					.filter(row -> below.contains(List.of(row.run()[0], row.run()[1], (long) row.filling().n())))
					.forEach(row -> keys.putIfAbsent(List.of(row.run()[0], row.run()[1]), keys.size() + 2)));
		}
		return keys;
	}

	private List<Slot> addTier(RoomAtGap.Tier tier, Map<List<Long>, Integer> matches, int unmatched) {
		List<int[]> rows = new ArrayList<>();
		for (int p = 0; p < tier.partings().size(); p++) {
			Parting parting = tier.partings().get(p);
			int[] cost = digits.of(IntStream.of(parting.terms()).asLongStream().toArray());
			rows.add(IntStream.concat(IntStream.of(p, parting.frames()), IntStream.of(cost)).toArray());
		}
		IntVar[] variables = table(rows, null);
		IntVar parting = variables[0];
		partings.add(parting);
		counts.add(variables[1]);
		keepRank(variables, 2);
		return tier.slots().stream().map(slot -> addSlot(slot, parting, matches, unmatched)).toList();
	}

	private Slot addSlot(List<RoomAtGap.Row> slot, IntVar parting, Map<List<Long>, Integer> matches, int unmatched) {
		List<int[]> rows = new ArrayList<>();
		for (RoomAtGap.Row row : slot) {
			Filling filling = row.filling();
			int key = row.run().length == 0 ? unmatched : matches.getOrDefault(List.of(row.run()[0], row.run()[1]), unmatched);
			int[] cost = digits.of(IntStream.of(filling.terms()).asLongStream().toArray());
			rows.add(IntStream.concat(IntStream.of(row.parting(), filling.n(), widthId(filling), key), IntStream.of(cost)).toArray());
		}
		IntVar[] variables = table(rows, parting);
		numbers.add(variables[1]);
		counts.add(variables[1]);
		widthIds.add(variables[2]);
		keepRank(variables, 4);
		return new Slot(variables[3], variables[1]);
	}

	private int widthId(Filling filling) {
		if (!filling.hasSay()) {
			return 0;
		}
		return ids.computeIfAbsent(List.of(filling.total(), (long) filling.n()), key -> {
			widths.add(new long[] { filling.total(), filling.n() });
			return widths.size() - 1;
		});
	}

	private void keepRank(IntVar[] variables, int from) {
		for (int d = 0; d < digits.count(); d++) {
			rankParts.get(d).add(variables[from + d]);
		}
	}

	/** Makes a variable for each column, the first if none is given, and a table over those that are not fixed. */
	private IntVar[] table(List<int[]> rows, IntVar first) {
		int wide = rows.get(0).length;
		IntVar[] variables = new IntVar[wide];
		List<Integer> open = new ArrayList<>();
		for (int c = 0; c < wide; c++) {
			int column = c;
			variables[c] = c == 0 && first != null ? first
					: model.intVar("x" + model.getNbVars(), rows.stream().mapToInt(row -> row[column]).sorted().distinct().toArray());
			if (!variables[c].isInstantiated()) {
				open.add(c);
			}
		}
		if (open.size() > 1) {
			Tuples tuples = new Tuples(true);
			rows.forEach(row -> tuples.add(open.stream().mapToInt(c -> row[c]).toArray()));
			model.table(open.stream().map(c -> variables[c]).toArray(IntVar[]::new), tuples, TABLE).post();
		}
		return variables;
	}

	private void match(List<Slot> lower, List<Slot> upper) {
		for (Slot below : lower) {
			for (Slot above : upper) {
				if (below.key().isInstantiated() && above.key().isInstantiated()) {
					if (below.key().getValue() == above.key().getValue()) {
						model.arithm(below.number(), "=", above.number()).post();
					}
				} else if (LongStream.of(below.key().stream().asLongStream().toArray()).anyMatch(key -> above.key().contains((int) key))) {
					model.ifThen(model.arithm(below.key(), "=", above.key()), model.arithm(below.number(), "=", above.number()));
				}
			}
		}
	}

	Model model() {
		return model;
	}

	/** Returns the first five terms as digits, to be minimised in this order. */
	IntVar[] rank() {
		return rank;
	}

	/** Returns the number of frames in the room. */
	IntVar frames() {
		return frames;
	}

	/** Returns the variables that decide all others. */
	IntVar[] decisions() {
		List<IntVar> all = new ArrayList<>(partings);
		all.addAll(numbers);
		return all.toArray(IntVar[]::new);
	}

	/** Returns for each run the number of its width. */
	List<IntVar> widthIds() {
		return widthIds;
	}

	/** Returns the widths: length shared, number of frames. The first stands for runs that have no say. */
	List<long[]> widths() {
		return widths;
	}
}
