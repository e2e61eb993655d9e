// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.site;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.osgi.util.NLS;

import wainscribe.layout.solver.BarredCounts;
import wainscribe.layout.solver.Bay;
import wainscribe.layout.solver.Expectation;
import wainscribe.layout.solver.Island;
import wainscribe.layout.solver.Layout;
import wainscribe.layout.solver.RoomTask;

/** Says of each run why it has not the number of frames that one would expect. */
final class RunReasons {

	private final RoomTask task;
	private final Layout layout;
	private final List<Long> gaps;
	private final Wording wording;

	/**
	 * Creates the reasons of a layout.
	 *
	 * @param gaps the gaps it was chosen from
	 */
	RunReasons(RoomTask task, Layout layout, List<Long> gaps, Wording wording) {
		this.gaps = gaps;
		this.task = task;
		this.layout = layout;
		this.wording = wording;
	}

	String of(WallSite site, Layout.Filled filled, Layout.Run run) {
		List<String> sentences = new ArrayList<>();
		if (run.rightSplit() >= 0) {
			sentences.add(NLS.bind(Messages.RunReasons_Split, wording.thing(site.elements().get(run.rightSplit()))));
			String barred = barred(site, filled, run);
			if (!barred.isEmpty()) {
				sentences.add(barred);
			}
		}
		if (run.anchor()) {
			return String.join(" ", sentences); //$NON-NLS-1$
		}
		filled.lost().stream().filter(lost -> lost.x0() >= run.x0() && lost.x0() < run.x1())
				.forEach(lost -> sentences.add(lost(site, filled, lost)));
		if (!run.frameable()) {
			long shortest = new Expectation(task, site.task(), filled.band(), layout).shortest(run.x0(), run.x1());
			sentences.add(NLS.bind(task.strips() == null ? Messages.RunReasons_TooShort : Messages.RunReasons_TooShortForStrips,
					wording.length(run.x1() - run.x0()), wording.length(shortest)));
		} else {
			String count = count(site, filled, run);
			if (!count.isEmpty()) {
				sentences.add(count);
			}
		}
		return String.join(" ", sentences); //$NON-NLS-1$
	}

	/** Returns what would bar frames in the run if it had not been parted; said once, at its first part. */
	private String barred(WallSite site, Layout.Filled filled, Layout.Run run) {
		if (run.leftSplit() >= 0) {
			return ""; //$NON-NLS-1$
		}
		List<Layout.Run> runs = filled.runs();
		int last = runs.indexOf(run);
		while (last + 1 < runs.size() && runs.get(last).rightSplit() >= 0) {
			last++;
		}
		BarredCounts barred = new BarredCounts(task, site.task(), filled.band(), gaps, run.x0(), runs.get(last).x1());
		return new BarredWording(wording, gaps, task).sentence(site.elements(), barred);
	}

	private String lost(WallSite site, Layout.Filled filled, Layout.Lost lost) {
		if (lost.legal()) {
			return Messages.RunReasons_AnchorLost;
		}
		Expectation expectation = new Expectation(task, site.task(), filled.band(), layout);
		List<Island> barring = expectation.barring(lost.x0() - layout.gap(), lost.x1() + layout.gap(), 1);
		return barring.isEmpty() ? Messages.RunReasons_AnchorStock
				: NLS.bind(Messages.RunReasons_AnchorBarred, things(site, barring));
	}

	private String count(WallSite site, Layout.Filled filled, Layout.Run run) {
		Expectation expectation = new Expectation(task, site.task(), filled.band(), layout);
		int expected = expectation.frames(run.x0(), run.x1());
		if (expected == 0 || expected == run.count()) {
			return ""; //$NON-NLS-1$
		}
		String frames = Wording.parts(expected, task);
		List<Island> barring = expectation.barring(run.x0(), run.x1(), expected);
		if (!barring.isEmpty()) {
			return NLS.bind(Messages.RunReasons_BarredByThing, frames, things(site, barring));
		}
		if (expectation.isTooLong(run.x0(), run.x1(), expected)) {
			return NLS.bind(Messages.RunReasons_StockTooShort, frames);
		}
		List<Island> near = expectation.near(run.x0(), run.x1(), expected);
		if (!near.isEmpty()) {
			return NLS.bind(Messages.RunReasons_Near, frames, things(site, near));
		}
		return run.count() == 0 || task.strips() != null || site.tiers().size() < 2 ? "" : NLS.bind(Messages.RunReasons_TwoTiers, frames); //$NON-NLS-1$
	}

	String of(WallSite site, Bay bay) {
		List<Island> barring = new Expectation(task, site.task(), null, layout).barring(bay);
		return barring.isEmpty() ? Messages.RunReasons_BayStock : NLS.bind(Messages.RunReasons_Bay, things(site, barring));
	}

	private String things(WallSite site, List<Island> islands) {
		return Wording.list(islands.stream().map(island -> wording.thing(site.elements().get(island.element()))).toList());
	}
}
