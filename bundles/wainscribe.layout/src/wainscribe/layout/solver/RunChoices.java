// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.solver;

import java.util.ArrayList;
import java.util.List;

/** Lists the numbers of frames that a run may take. */
final class RunChoices {

	private static final long[] NO_SAY = {};

	private final FrameFit fit;
	private final boolean upper;

	RunChoices(FrameFit fit, boolean upper) {
		this.fit = fit;
		this.upper = upper;
	}

	/** Returns the choices from few frames to many; one without frames when nothing else may be. */
	List<Choice> of(long x0, long x1) {
		if (!fit.isFrameable(x1 - x0)) {
			return List.of(new Choice(0, 0, 0, NO_SAY));
		}
		List<Choice> choices = new ArrayList<>();
		int most = fit.most(x1 - x0);
		for (int n = 1; n <= most; n += fit.step()) {
			int near = fit.near(x0, x1, n);
			if (near != FrameFit.ILLEGAL) {
				long rank = near * Rank.NEAR + (fit.isOutOfBand(x0, x1, n) ? Rank.OUT_OF_BAND : 0);
				long[] widths = fit.isPier(x1 - x0) ? NO_SAY : new long[] { fit.moduleWidth(x1 - x0, n) };
				choices.add(new Choice(upper ? 0 : n, upper ? n : 0, rank, widths));
			}
		}
		return choices.isEmpty() ? List.of(new Choice(0, 0, Rank.PLAIN, NO_SAY)) : choices;
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
