// SPDX-License-Identifier: EPL-2.0
package wainscribe.cutting.solver;

/**
 * Fills one bar after the other as fully as can be found in a few steps, always with the longest piece still open (minimum bin
 * slack: Gupta and Ho 1999, Prod. Plan. Control 10(6), 598-603), and the last few pieces by a search for the least cost.
 * Takes a time proportional to the number of bars.
 */
final class SlackFilling {

	private static final int STEPS_A_BAR = 3000;
	private static final int LAST_PIECES = 48;
	private static final long LAST_STEPS = 150_000;
	/** A bar is full enough if less than this part of it is wasted. */
	private static final long FULL = 2000;

	private final CuttingTask task;
	private final SearchLimit limit;
	private Packing packing;
	private int[] counts;
	private int[] best;
	private long leastRoom;
	private int steps;

	SlackFilling(CuttingTask task, SearchLimit limit) {
		this.task = task;
		this.limit = limit;
	}

	/** Makes a packing, perhaps with pieces left open. */
	Packing run() {
		packing = new Packing(task);
		while (openPieces() > LAST_PIECES && !limit.isReached()) {
			Pattern filling = cheapestFilling();
			if (filling == null) {
				return packing;
			}
			packing.cut(filling, filling.timesWithin(packing.open(), packing.left()[filling.bar()]));
		}
		PartialTask last = new PartialTask(task, packing.open(), packing.left());
		Incumbent incumbent = new Incumbent(last.task(), () -> { });
		ColumnPool pool = new ColumnPool();
		for (int k = FirstFit.ANY; k < task.bars().size(); k++) {
			Packing start = new Packing(last.task());
			new FirstFit(last.task()).complete(start, k);
			incumbent.offer(new Downsizing(last.task()).of(start));
		}
		if (incumbent.best().isComplete()) {
			new CostSearch(last.task(), incumbent, pool, limit.part(LAST_STEPS)).run();
		}
		last.addTo(packing, incumbent.best());
		return packing;
	}

	private int openPieces() {
		int sum = 0;
		for (int count : packing.open()) {
			sum += count;
		}
		return sum;
	}

	private Pattern cheapestFilling() {
		int first = 0;
		while (packing.open()[first] == 0) {
			first++;
		}
		Pattern cheapest = null;
		double leastRate = Double.POSITIVE_INFINITY;
		for (int k = 0; k < task.bars().size(); k++) {
			BarType bar = task.bars().get(k);
			if (packing.left()[k] > 0 && bar.capacity() >= task.weight(first)) {
				fill(bar.capacity(), first);
				double rate = (double) bar.cost() / (bar.capacity() - leastRoom);
				if (rate < leastRate) {
					leastRate = rate;
					cheapest = new Pattern(k, best);
				}
			}
		}
		return cheapest;
	}

	private void fill(long capacity, int first) {
		counts = new int[task.items()];
		counts[first] = 1;
		leastRoom = Long.MAX_VALUE;
		steps = 0;
		search(first, capacity - task.weight(first), capacity / FULL);
	}

	private void search(int from, long room, long goodEnough) {
		if (room < leastRoom) {
			leastRoom = room;
			best = counts.clone();
		}
		for (int i = from; i < counts.length; i++) {
			if (leastRoom <= goodEnough || steps > STEPS_A_BAR) {
				return;
			}
			if (task.weight(i) <= room && packing.open()[i] > counts[i]) {
				steps++;
				counts[i]++;
				search(i, room - task.weight(i), goodEnough);
				counts[i]--;
			}
		}
	}
}
