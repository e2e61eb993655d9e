// SPDX-License-Identifier: EPL-2.0
package wainscribe.benchmarks.cutting;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.TreeMap;

import com.google.ortools.Loader;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;

import wainscribe.cutting.CuttingJob;
import wainscribe.cutting.PieceDemand;
import wainscribe.cutting.StockLength;
import wainscribe.model.length.Length;

/**
 * The cutting plan of one profile as an assignment model for the CP-SAT solver of OR-Tools (general purpose, exact): places for
 * bars, each of one kind or none, and how many pieces of each length are cut from the bar in each place. To suit the solver equal
 * pieces are counted, not told apart; lengths are divided by their greatest common divisor; places are in order of their bars; a
 * cost known to be possible is given; and it may use all processors.
 */
final class AssignmentModel {

	private record Kind(long capacity, long cost, int number) {
	}

	private final CpModel model = new CpModel();
	private final List<Kind> kinds = new ArrayList<>();
	private final TreeMap<Long, Integer> items = new TreeMap<>(Comparator.reverseOrder());
	private final long enough;
	private final int places;

	/**
	 * Makes the model.
	 *
	 * @param job    a job of one profile
	 * @param enough a cost, in hundredths, that some plan has
	 */
	AssignmentModel(CuttingJob job, BigDecimal enough) {
		this.enough = cents(enough);
		for (PieceDemand piece : job.pieces()) {
			items.merge(piece.length().plus(job.kerf()).units(), piece.quantity(), Integer::sum);
		}
		int pieces = items.values().stream().mapToInt(Integer::intValue).sum();
		for (StockLength row : job.stock()) {
			kinds.add(new Kind(capacity(job, row.length()), cents(row.price()), row.available().orElse(pieces)));
		}
		Map<Long, Integer> offcuts = new TreeMap<>();
		job.offcuts().forEach(row -> offcuts.merge(capacity(job, row.length()), 1, Integer::sum));
		offcuts.forEach((capacity, number) -> kinds.add(new Kind(capacity, 0, number)));
		kinds.sort(Comparator.comparingLong(Kind::capacity).reversed());
		long cheapest = kinds.stream().mapToLong(Kind::cost).filter(cost -> cost > 0).min().orElse(1);
		places = (int) Math.min(pieces, this.enough / cheapest + job.offcuts().size());
		build();
	}

	static void load() {
		Loader.loadNativeLibraries();
	}

	private static long capacity(CuttingJob job, Length length) {
		return length.minus(job.endTrim()).plus(job.kerf()).units();
	}

	private static long cents(BigDecimal amount) {
		return amount.movePointRight(2).longValueExact();
	}

	private void build() {
		long divisor = items.keySet().stream().reduce(0L, AssignmentModel::divisor);
		LinearExprBuilder cost = LinearExpr.newBuilder();
		List<LinearExprBuilder> cut = new ArrayList<>();
		items.forEach((weight, number) -> cut.add(LinearExpr.newBuilder()));
		List<LinearExprBuilder> taken = new ArrayList<>();
		kinds.forEach(kind -> taken.add(LinearExpr.newBuilder()));
		LinearExprBuilder before = null;
		for (int place = 0; place < places; place++) {
			LinearExprBuilder room = LinearExpr.newBuilder();
			List<Literal> choices = new ArrayList<>();
			for (int k = 0; k < kinds.size(); k++) {
				Literal chosen = model.newBoolVar("");
				choices.add(chosen);
				room.addTerm(chosen, kinds.get(k).capacity / divisor);
				cost.addTerm(chosen, kinds.get(k).cost);
				taken.get(k).add(chosen);
			}
			model.addAtMostOne(choices);
			LinearExprBuilder used = LinearExpr.newBuilder();
			int item = 0;
			for (Map.Entry<Long, Integer> entry : items.entrySet()) {
				IntVar count = model.newIntVar(0, Math.min(entry.getValue(), kinds.getFirst().capacity / entry.getKey()), "");
				used.addTerm(count, entry.getKey() / divisor);
				cut.get(item++).add(count);
			}
			model.addLessOrEqual(used, room);
			if (before != null) {
				model.addGreaterOrEqual(before, room);
			}
			before = room;
		}
		int item = 0;
		for (int number : items.values()) {
			model.addEquality(cut.get(item++), number);
		}
		for (int k = 0; k < kinds.size(); k++) {
			model.addLessOrEqual(taken.get(k), kinds.get(k).number);
		}
		model.addLessOrEqual(cost, enough);
		model.minimize(cost);
	}

	private static long divisor(long a, long b) {
		return b == 0 ? a : divisor(b, a % b);
	}

	/** Returns the least cost in hundredths; empty if it was not proved in time. */
	OptionalLong solve(double seconds) {
		CpSolver solver = new CpSolver();
		solver.getParameters().setMaxTimeInSeconds(seconds);
		solver.getParameters().setNumWorkers(Runtime.getRuntime().availableProcessors());
		return solver.solve(model) == CpSolverStatus.OPTIMAL ? OptionalLong.of(Math.round(solver.objectiveValue())) : OptionalLong.empty();
	}
}
