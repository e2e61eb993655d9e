// SPDX-License-Identifier: EPL-2.0
package wainscribe.benchmarks.general;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.chocosolver.solver.Model;
import org.chocosolver.solver.Solver;
import org.chocosolver.solver.exception.ContradictionException;
import org.chocosolver.solver.search.strategy.Search;
import org.chocosolver.solver.variables.IntVar;

import wainscribe.layout.solver.RoomTask;

/**
 * Solves the layout problem of a room with a general constraint solver, to compare with the layout solver.
 * <p>
 * Everything is arranged to suit the general solver: geometry is worked out beforehand and given to it as tables, the gap is
 * fixed in each of its models, terms are packed into as few objectives as its ints allow, islands are made blockers and wide
 * gaps are tried only when some stretch stays plain without, and later gaps must beat the best of the earlier ones.
 */
public final class GeneralSolver {

	/**
	 * An answer and what it took.
	 *
	 * @param terms       the terms of the best layout
	 * @param tableNanos  working out geometry and legality, which is not the general solver's work
	 * @param searchNanos inside the solver's search
	 * @param models      models made
	 */
	public record Answer(Terms terms, long tableNanos, long searchNanos, int models) {
	}

	private record AtGap(RoomAtGap room, int[] rank) {
	}

	private final RoomTask task;
	private final long deadline;
	private long tableNanos;
	private long searchNanos;
	private int models;

	/**
	 * Creates a solver.
	 *
	 * @param task  the problem: level walls without placed frames
	 * @param nanos time after which to give up
	 */
	public GeneralSolver(RoomTask task, long nanos) {
		this.task = task;
		deadline = System.nanoTime() + nanos;
	}

	/** Returns the terms of the best layout and the time spent inside the solver; empty if there was not enough time. */
	public Optional<Answer> solve() {
		try {
			return Optional.of(answer());
		} catch (OutOfTimeException e) {
			return Optional.empty();
		}
	}

	private Answer answer() throws OutOfTimeException {
		List<Pass> passes = new ArrayList<>(List.of(new Pass(task.gaps(), false), new Pass(task.gaps(), true)));
		if (!task.wideGaps().isEmpty()) {
			passes.add(new Pass(task.wideGaps(), false));
			passes.add(new Pass(task.wideGaps(), true));
		}
		Digits digits = null;
		List<AtGap> best = List.of();
		for (Pass pass : passes) {
			long from = System.nanoTime();
			List<RoomAtGap> rooms = pass.rooms(task);
			tableNanos += System.nanoTime() - from;
			digits = pass.digits(rooms);
			best = best(rooms, digits);
			if (digits.terms(best.getFirst().rank())[0] == 0) {
				break;
			}
		}
		return finish(best, digits);
	}

	private record Pass(List<Long> gaps, boolean withSplits) {

		List<RoomAtGap> rooms(RoomTask task) {
			return gaps.stream().sorted(Comparator.comparingLong(gap -> Math.abs(gap - task.defaultGap())))
					.map(gap -> RoomAtGap.of(task, gap, withSplits)).toList();
		}

		Digits digits(List<RoomAtGap> rooms) {
			long[] bounds = new long[5];
			for (RoomAtGap room : rooms) {
				long[] one = room.bounds();
				Arrays.setAll(bounds, t -> Math.max(bounds[t], one[t]));
			}
			return new Digits(bounds);
		}
	}

	/** Returns the gaps at which the first five terms are best, nearest to the default first. */
	private List<AtGap> best(List<RoomAtGap> rooms, Digits digits) throws OutOfTimeException {
		List<AtGap> best = new ArrayList<>();
		for (RoomAtGap room : rooms) {
			GapModel model = new GapModel(room, digits);
			models++;
			int[] bar = best.isEmpty() ? null : best.getFirst().rank();
			int[] rank = minimum(model.model(), model.rank(), bar, new IntVar[0], model.decisions());
			if (rank != null) {
				if (bar != null && Arrays.compare(rank, bar) < 0) {
					best.clear();
				}
				best.add(new AtGap(room, rank));
			}
		}
		return best;
	}

	/** Finds the other terms at the gaps that are left. */
	private Answer finish(List<AtGap> gaps, Digits digits) throws OutOfTimeException {
		int[] best = null;
		long[] module = null;
		long shift = 0;
		Digits moduleDigits = null;
		for (AtGap at : gaps) {
			GapModel room = new GapModel(at.room(), digits);
			for (int d = 0; d < at.rank().length; d++) {
				room.model().arithm(room.rank()[d], "=", at.rank()[d]).post();
			}
			if (propagate(room.model())) {
				ModuleModel added = new ModuleModel(room);
				models++;
				if (moduleDigits != null) {
					bar(room.model(), added, module);
				}
				IntVar[] objectives = Arrays.copyOf(added.terms(), added.terms().length + 1);
				objectives[added.terms().length] = room.frames();
				int[] found = minimum(room.model(), objectives, null, new IntVar[] { added.window() }, room.decisions());
				if (found != null) {
					long[] terms = added.digits().terms(Arrays.copyOf(found, found.length - 1));
					int[] all = { (int) terms[0], (int) terms[1], found[found.length - 1] };
					if (best == null || Arrays.compare(all, best) < 0) {
						best = all;
						module = terms;
						moduleDigits = added.digits();
						shift = Math.abs(at.room().gap() - task.defaultGap());
					}
				}
			}
		}
		long[] first = digits.terms(gaps.getFirst().rank());
		return new Answer(new Terms(first[0], first[1], first[2], first[3], first[4], best[0], best[1], best[2], shift), tableNanos,
				searchNanos, models);
	}

	/** A later gap must not be worse in the module terms. */
	private static void bar(Model model, ModuleModel added, long[] module) {
		if (added.digits().count() == 1) {
			long[] bar = { module[0], module[1] };
			model.arithm(added.terms()[0], "<=", added.digits().of(bar)[0]).post();
		} else {
			model.arithm(added.terms()[0], "<=", (int) module[0]).post();
		}
	}

	private boolean propagate(Model model) {
		long from = System.nanoTime();
		try {
			model.getSolver().propagate();
			return true;
		} catch (ContradictionException e) {
			return false;
		} finally {
			searchNanos += System.nanoTime() - from;
		}
	}

	/** Minimises objectives in their order; null if there is no solution, or none that is not worse than the bar. */
	private int[] minimum(Model model, IntVar[] objectives, int[] bar, IntVar[] first, IntVar[] decisions)
			throws OutOfTimeException {
		Solver solver = model.getSolver();
		int[] least = new int[objectives.length];
		boolean mayBeWorse = bar == null;
		for (int i = 0; i < objectives.length; i++) {
			if (!mayBeWorse) {
				model.arithm(objectives[i], "<=", bar[i]).post();
			}
			long from = System.nanoTime();
			if (first.length > 0) {
				solver.setSearch(Search.inputOrderLBSearch(first), Search.intVarSearch(decisions));
			} else {
				solver.setSearch(Search.intVarSearch(decisions));
			}
			solver.limitTime(Math.max(1, (deadline - from) / 1_000_000));
			boolean isAny = false;
			model.setObjective(Model.MINIMIZE, objectives[i]);
			while (solver.solve()) {
				least[i] = objectives[i].getValue();
				isAny = true;
			}
			searchNanos += System.nanoTime() - from;
			if (solver.isStopCriterionMet()) {
				throw new OutOfTimeException();
			}
			if (!isAny) {
				return null;
			}
			mayBeWorse |= bar != null && least[i] < bar[i];
			solver.reset();
			model.arithm(objectives[i], "=", least[i]).post();
		}
		return least;
	}

	private static final class OutOfTimeException extends Exception {
		private static final long serialVersionUID = 1;
	}
}
