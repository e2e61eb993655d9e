// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.solver;

import java.util.ArrayList;
import java.util.List;

/** Lists the numbers of frames, or of fields between strips, that a run may take. */
final class RunChoices {

	private static final long[] NO_SAY = {};

	private final RunFit fit;
	private final long emptyRank;
	private final boolean upper;

	/**
	 * Creates the list.
	 *
	 * @param emptyRank what it costs to leave a run plain that is long enough
	 * @param upper     whether choices count as those of the upper tier
	 */
	RunChoices(RunFit fit, long emptyRank, boolean upper) {
		this.fit = fit;
		this.emptyRank = emptyRank;
		this.upper = upper;
	}

	/** Returns the choices from few frames to many; one without frames when nothing else may be. */
	List<Choice> of(long x0, long x1) {
		if (!fit.isFrameable(x0, x1)) {
			return List.of(new Choice(0, 0, 0, NO_SAY));
		}
		List<Choice> choices = new ArrayList<>();
		int most = fit.most(x0, x1);
		for (int n = fit.fewest(x0, x1); n <= most; n += fit.step()) {
			int near = fit.near(x0, x1, n);
			if (near != RunFit.ILLEGAL) {
				long rank = near * Rank.NEAR + (fit.isOutOfBand(x0, x1, n) ? Rank.OUT_OF_BAND : 0);
				long[] widths = fit.isPier(x0, x1) ? NO_SAY : new long[] { fit.moduleWidth(x0, x1, n) };
				choices.add(new Choice(upper ? 0 : n, upper ? n : 0, rank, widths));
			}
		}
		return choices.isEmpty() ? List.of(new Choice(0, 0, emptyRank, NO_SAY)) : choices;
	}

	/** Returns the choices for two runs with the same ends: the same number in both if any number may be in both. */
	static List<Choice> joined(List<Choice> lower, List<Choice> upper) {
		List<Choice> same = new ArrayList<>();
		List<Choice> all = new ArrayList<>();
		for (Choice below : lower) {
			for (Choice above : upper) {
				Choice both = below.with(above);
				all.add(both);
				if (below.lower() == above.upper() && below.lower() > 0) {
					same.add(both);
				}
			}
		}
		return same.isEmpty() ? all : same;
	}
}
