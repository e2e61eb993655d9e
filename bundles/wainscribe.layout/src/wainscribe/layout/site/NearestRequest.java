// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.site;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.LongPredicate;

import wainscribe.layout.solver.Rank;
import wainscribe.layout.solver.RoomSolver;
import wainscribe.layout.solver.RoomTask;
import wainscribe.model.length.Length;

/** Looks for the nearest rail height, or gap, at which nothing stays plain and nothing is parted. */
final class NearestRequest {

	private static final int FARTHEST_STEPS = 30;
	private static final int TAPE_MARKS_A_STEP = 4;
	private static final int GAPS_LOOKED_AT = 5;

	private final RoomSite site;
	private final RailCheck rails;

	NearestRequest(RoomSite site) {
		this.site = site;
		rails = new RailCheck(site);
	}

	/**
	 * Returns the top of the nearest rail that hits nothing and leaves no trouble, on a grid of 1/4 in or 4 mm from the one
	 * asked for, at most 7 1/2 in or 120 mm away; it is looked at with five of the gaps that may be chosen.
	 */
	Optional<Length> rail() {
		if (!site.pattern().hasRail()) {
			return Optional.empty();
		}
		long top = site.brief().railTop().units();
		long step = site.brief().units().tapeMark().units() * TAPE_MARKS_A_STEP;
		for (int i = 1; i <= FARTHEST_STEPS; i++) {
			for (long candidate : new long[] { top - i * step, top + i * step }) {
				if (isFreeAt(candidate)) {
					return Optional.of(new Length(candidate));
				}
			}
		}
		return Optional.empty();
	}

	private boolean isFreeAt(long top) {
		if (top <= 0 || !rails.isClearAt(top)) {
			return false;
		}
		RoomTask task = site.with(site.brief().withRailTop(new Length(top))).task();
		List<Long> gaps = task.gaps();
		int every = Math.max(1, (gaps.size() - 1) / (GAPS_LOOKED_AT - 1));
		List<Long> some = gaps.stream().filter(gap -> gaps.indexOf(gap) % every == 0).toList();
		return isFree(new RoomSolver(task).leastTrouble(some));
	}

	/**
	 * Returns the gap of the widest range that leaves no trouble and is nearest to the one of a layout; gaps that the layout
	 * could have chosen are not looked at again.
	 *
	 * @param tried the gaps the layout was chosen from
	 */
	Optional<Length> gap(long chosen, List<Long> tried) {
		RoomTask task = site.with(site.brief().withGap(null)).task();
		RoomSolver solver = new RoomSolver(task);
		LongPredicate free = gap -> isFree(solver.leastTrouble(List.of(gap)));
		return task.wideGaps().stream().filter(gap -> !tried.contains(gap))
				.sorted(Comparator.comparingLong((Long gap) -> Math.abs(gap - chosen)).thenComparingLong(gap -> gap))
				.filter(free::test).findFirst().map(Length::new);
	}

	private static boolean isFree(long rank) {
		return Rank.plain(rank) == 0 && Rank.splits(rank) == 0;
	}
}
