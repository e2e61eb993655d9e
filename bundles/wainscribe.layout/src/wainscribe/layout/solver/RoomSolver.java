// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.solver;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Finds the best layout of a room and proves it by leaving out only what cannot be better.
 * <p>
 * For one gap and one place of the module the cost of a layout is a sum over its runs, so each wall is a shortest way through
 * a small graph. The first five terms do not depend on the module; ways that do not cost least in them are dropped first.
 * Islands are made barriers only if some stretch stays plain at every gap without that, because any layout without plain
 * stretches and without splits is better than one with splits.
 */
public final class RoomSolver {

	private final RoomTask task;

	/**
	 * Creates a solver.
	 *
	 * @param task the problem
	 */
	public RoomSolver(RoomTask task) {
		this.task = task;
	}

	/**
	 * An answer.
	 *
	 * @param layout the layout
	 * @param gaps   the gaps it was chosen from
	 */
	public record Answer(Layout layout, List<Long> gaps) {
	}

	/** Returns the best layout; there always is one, if only with plain stretches. */
	public Answer best() {
		List<RoomView> views = views(task.gaps());
		List<Long> gaps = task.gaps();
		if (!task.wideGaps().isEmpty() && Rank.plain(least(views)) > 0) {
			gaps = task.wideGaps();
			views = views(gaps);
		}
		RoomSearch.Found best = null;
		for (RoomView view : best(views)) {
			best = new RoomSearch(view.pruned(), task.defaultGap()).best(0, Integer.MAX_VALUE, best);
		}
		return new Answer(new LayoutTrace(task).layout(best), gaps);
	}

	/**
	 * Returns the best layout whose number of frames lies in a range.
	 *
	 * @param gaps  the gaps to choose from
	 * @param least least number of frames
	 * @param most  greatest number of frames
	 * @return the layout, empty if none has so many
	 */
	public Optional<Layout> best(List<Long> gaps, int least, int most) {
		RoomSearch.Found best = null;
		for (RoomView view : views(gaps)) {
			best = new RoomSearch(view, task.defaultGap()).best(least, most, best);
		}
		return Optional.ofNullable(best).map(new LayoutTrace(task)::layout);
	}

	/**
	 * Returns the fewest plain stretches and, with these, splits that any of the gaps allows.
	 *
	 * @param gaps the gaps to choose from
	 * @return a rank, see {@link Rank#plain} and {@link Rank#splits}
	 */
	public long leastTrouble(List<Long> gaps) {
		return least(views(gaps));
	}

	/** Looks at the room at each gap, with splits only if they may be needed. */
	private List<RoomView> views(List<Long> gaps) {
		List<RoomView> whole = views(gaps, false);
		return Rank.plain(least(whole)) == 0 ? whole : views(gaps, true);
	}

	private List<RoomView> views(List<Long> gaps, boolean withSplits) {
		List<RoomView> views = new ArrayList<>();
		for (long gap : gaps) {
			task.rows().forEach(rows -> views.add(RoomView.of(task, gap, rows, withSplits)));
		}
		views.sort(Comparator.comparingLong((RoomView view) -> Math.abs(view.gap() - task.defaultGap()))
				.thenComparingLong(RoomView::gap).thenComparingInt(RoomView::rows));
		return views;
	}

	private static long least(List<RoomView> views) {
		return views.stream().mapToLong(RoomView::leastRank).min().orElse(0);
	}

	private static List<RoomView> best(List<RoomView> views) {
		long least = least(views);
		return views.stream().filter(view -> view.leastRank() == least).toList();
	}
}
