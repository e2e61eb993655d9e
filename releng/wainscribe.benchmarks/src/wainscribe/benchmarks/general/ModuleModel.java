// SPDX-License-Identifier: EPL-2.0
package wainscribe.benchmarks.general;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.IntStream;

import org.chocosolver.solver.Model;
import org.chocosolver.solver.constraints.extension.Tuples;
import org.chocosolver.solver.variables.IntVar;

/**
 * Adds the module to a model: where its window lies, and for each run whether it is outside and by how much.
 * <p>
 * The window begins or ends at one of the widths. Distances are exact fractions, held in three ints: tenths of a millimetre,
 * units of 1/8000 mm, and parts of a unit; only the sums of the last two are carried over, once.
 */
final class ModuleModel {

	private static final long WINDOW = 25L * 8000;
	private static final long TENTH = 800;
	private static final long LARGEST = 20_000_000;

	private final IntVar window;
	private final IntVar[] terms;
	private final Digits digits;

	/**
	 * Adds a module.
	 *
	 * @param room the model; its width variables hold only what can still be
	 */
	ModuleModel(GapModel room) {
		Model model = room.model();
		List<IntVar> slots = room.widthIds().stream().filter(slot -> slot.getUB() > 0).toList();
		TreeSet<Integer> used = new TreeSet<>();
		slots.forEach(slot -> slot.stream().forEach(used::add));
		used.remove(0);
		long parts = parts(room.widths(), used, slots.size());
		List<Long> windows = windows(room.widths(), used, parts);
		digits = digits(room.widths(), used, windows, parts, slots.size());
		window = model.intVar(0, windows.size() - 1);
		List<List<IntVar>> columns = new ArrayList<>();
		IntStream.range(0, digits.count() + 2).forEach(c -> columns.add(new ArrayList<>()));
		for (IntVar slot : slots) {
			addSlot(model, room.widths(), slot, windows, parts, columns);
		}
		terms = new IntVar[digits.count()];
		carry(model, columns, parts);
	}

	/** Returns into how many parts a unit is divided so that all widths are whole, or nearly where that would be too many. */
	private static long parts(List<long[]> widths, TreeSet<Integer> used, int slots) {
		long most = LARGEST / Math.max(1, slots);
		long parts = 1;
		for (int id : used) {
			long n = widths.get(id)[1];
			long next = parts / gcd(parts, n) * n;
			if (next > most) {
				return Math.min(most, 720_720);
			}
			parts = next;
		}
		return parts;
	}

	private static long gcd(long a, long b) {
		return b == 0 ? a : gcd(b, a % b);
	}

	private static long width(long[] width, long parts) {
		return Math.multiplyExact(width[0], parts) / width[1];
	}

	private static List<Long> windows(List<long[]> widths, TreeSet<Integer> used, long parts) {
		TreeSet<Long> windows = new TreeSet<>();
		for (int id : used) {
			windows.add(width(widths.get(id), parts));
			windows.add(width(widths.get(id), parts) - WINDOW * parts);
		}
		return windows.isEmpty() ? List.of(0L) : List.copyOf(windows);
	}

	private static long distance(long width, long window, long parts) {
		return Math.max(0, Math.max(window - width, width - window - WINDOW * parts));
	}

	private static Digits digits(List<long[]> widths, TreeSet<Integer> used, List<Long> windows, long parts, int slots) {
		long most = 0;
		for (int id : used) {
			long width = width(widths.get(id), parts);
			most = Math.max(most, Math.max(distance(width, windows.getFirst(), parts), distance(width, windows.getLast(), parts)));
		}
		return new Digits(new long[] { slots, (most / parts / TENTH + 2) * slots + 2 });
	}

	private void addSlot(Model model, List<long[]> widths, IntVar slot, List<Long> windows, long parts,
			List<List<IntVar>> columns) {
		List<int[]> rows = new ArrayList<>();
		for (int id : slot.stream().toArray()) {
			for (int w = 0; w < windows.size(); w++) {
				long away = id == 0 ? 0 : distance(width(widths.get(id), parts), windows.get(w), parts);
				long units = away / parts;
				int[] cost = digits.of(away > 0 ? 1 : 0, units / TENTH);
				rows.add(IntStream.concat(IntStream.of(w, id, (int) (units % TENTH), (int) (away % parts)), IntStream.of(cost)).toArray());
			}
		}
		IntVar[] all = new IntVar[rows.getFirst().length];
		all[0] = window;
		all[1] = slot;
		for (int c = 2; c < all.length; c++) {
			int column = c;
			all[c] = model.intVar("m" + model.getNbVars(), rows.stream().mapToInt(row -> row[column]).sorted().distinct().toArray());
			columns.get(c - 2).add(all[c]);
		}
		Tuples tuples = new Tuples(true);
		rows.forEach(tuples::add);
		model.table(all, tuples, GapModel.TABLE).post();
	}

	/** Sums the columns; what is left of units and parts is carried into tenths, halves up. */
	private void carry(Model model, List<List<IntVar>> columns, long parts) {
		IntVar fromParts = carried(model, columns.get(1), null, parts, 0);
		IntVar fromUnits = carried(model, columns.get(0), fromParts, TENTH, TENTH / 2);
		for (int d = 0; d < terms.length; d++) {
			List<IntVar> all = new ArrayList<>(columns.get(2 + d));
			if (d == terms.length - 1) {
				all.add(fromUnits);
			}
			int most = all.stream().mapToInt(IntVar::getUB).sum();
			terms[d] = model.intVar(0, most, true);
			model.sum(all.toArray(IntVar[]::new), "=", terms[d]).post();
		}
	}

	private static IntVar carried(Model model, List<IntVar> column, IntVar more, long size, long start) {
		List<IntVar> all = new ArrayList<>(column);
		if (more != null) {
			all.add(more);
		}
		int most = all.stream().mapToInt(IntVar::getUB).sum();
		IntVar sum = model.intVar(0, most, true);
		model.sum(all.toArray(IntVar[]::new), "=", sum).post();
		IntVar carry = model.intVar(0, (int) ((most + start) / size), true);
		IntVar rest = model.intVar(0, (int) (size - 1), true);
		model.scalar(new IntVar[] { carry, rest, sum }, new int[] { (int) size, 1, -1 }, "=", (int) start).post();
		return carry;
	}

	/** Returns the sixth and seventh term as digits, to be minimised in this order. */
	IntVar[] terms() {
		return terms;
	}

	/** Returns how the digits are read. */
	Digits digits() {
		return digits;
	}

	/** Returns the place of the window. */
	IntVar window() {
		return window;
	}
}
