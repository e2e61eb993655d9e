// SPDX-License-Identifier: EPL-2.0
package wainscribe.cutting.solver;

import java.util.ArrayList;
import java.util.List;

/** All numbers of bars that cost exactly so much and that the cuts allow. Bars that cost nothing are all taken. */
final class EqualMixes {

	private static final long MOST_STEPS = 5_000_000;

	private final List<BarType> bars;
	private final List<DualCut> cuts;
	private final List<int[]> failed;
	private final long cost;
	private final List<int[]> found = new ArrayList<>();
	private int wanted;
	private long steps;
	private int[] numbers;
	private int lastPaid;

	EqualMixes(List<BarType> bars, List<DualCut> cuts, List<int[]> failed, long cost) {
		this.bars = bars;
		this.cuts = cuts;
		this.failed = failed;
		this.cost = cost;
	}

	/** Returns them; as many as asked for if there may be more. */
	List<int[]> all(int atMost) {
		wanted = atMost;
		numbers = new int[bars.size()];
		for (int k = 0; k < bars.size(); k++) {
			lastPaid = bars.get(k).cost() > 0 ? k : lastPaid;
		}
		search(0, cost);
		while (steps > MOST_STEPS && found.size() < wanted) {
			found.add(numbers.clone());
		}
		return found;
	}

	private void search(int bar, long money) {
		if (++steps > MOST_STEPS || found.size() >= wanted) {
			return;
		}
		if (bar == bars.size()) {
			if (money == 0 && cuts.stream().allMatch(cut -> cut.slack(numbers) >= 0) && failed.stream().noneMatch(this::isWithin)) {
				found.add(numbers.clone());
			}
			return;
		}
		BarType type = bars.get(bar);
		if (type.cost() == 0) {
			numbers[bar] = type.limit();
			search(bar + 1, money);
		} else {
			int most = (int) Math.min(type.limit(), money / type.cost());
			int least = bar == lastPaid ? most : 0;
			for (int number = most; number >= least; number--) {
				numbers[bar] = number;
				search(bar + 1, money - number * type.cost());
			}
		}
		numbers[bar] = 0;
	}

	private boolean isWithin(int[] tooFew) {
		for (int k = 0; k < numbers.length; k++) {
			if (numbers[k] > tooFew[k]) {
				return false;
			}
		}
		return true;
	}
}
