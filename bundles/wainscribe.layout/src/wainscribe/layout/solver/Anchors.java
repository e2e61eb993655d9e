// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.solver;

import java.util.ArrayList;
import java.util.List;

/** Finds the window anchors of a tier: a frame of the cased width under each window that lies wholly above it. */
final class Anchors {

	private final Limits limits;
	private final FrameFit fit;
	private final long gap;

	Anchors(Limits limits, FrameFit fit, long gap) {
		this.limits = limits;
		this.fit = fit;
		this.gap = gap;
	}

	/** Returns one cut for each anchor; {@link RunFit#ILLEGAL} as its near distances when it cannot be. */
	List<Cut> find(WallTask wall, Band band, List<Cut> blocked) {
		List<long[]> spans = new ArrayList<>();
		for (Barrier barrier : wall.barriers()) {
			Box box = barrier.outline();
			if (barrier.kind() == Barrier.Kind.WINDOW && isAbove(box, band)) {
				long[] last = spans.isEmpty() ? null : spans.get(spans.size() - 1);
				if (last != null && box.x0() - last[1] < gap) {
					last[1] = Math.max(last[1], box.x1());
				} else {
					spans.add(new long[] { box.x0(), box.x1() });
				}
			}
		}
		List<Cut> anchors = new ArrayList<>();
		for (long[] span : spans) {
			if (span[1] - span[0] >= limits.least() && isInRun(span[0], span[1], blocked)) {
				anchors.add(new Cut(span[0], span[1], Cut.Kind.ANCHOR, -1, fit.near(span[0], span[1] - span[0])));
			}
		}
		return anchors;
	}

	private static boolean isAbove(Box box, Band band) {
		long left = Math.max(box.x0(), band.x0());
		long right = Math.min(box.x1(), band.x1());
		return left < right && Math.max(band.top().at(left), band.top().at(right)) <= box.y0();
	}

	private boolean isInRun(long x0, long x1, List<Cut> blocked) {
		for (int i = 0; i + 1 < blocked.size(); i++) {
			if (x0 - blocked.get(i).x1() >= gap && blocked.get(i + 1).x0() - x1 >= gap) {
				return true;
			}
		}
		return false;
	}
}
