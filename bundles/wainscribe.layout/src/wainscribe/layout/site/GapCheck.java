// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.site;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.eclipse.osgi.util.NLS;

import wainscribe.layout.PlainStretch;
import wainscribe.layout.Tier;
import wainscribe.layout.brief.PracticeDefaults;
import wainscribe.layout.solver.Band;
import wainscribe.layout.solver.Expectation;
import wainscribe.layout.solver.Layout;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;

/**
 * Refuses a gap wider than any that is tried at which nothing fits in the whole room, although something would at a smaller one.
 * For strips, a gap is the field aimed at; one that no stretch can have is refused.
 */
final class GapCheck {

	private final RoomSite site;
	private final Wording wording;

	GapCheck(RoomSite site, Wording wording) {
		this.site = site;
		this.wording = wording;
	}

	/**
	 * A stretch with the largest gap, or the widest field, that it could have.
	 */
	private record Stretch(Wall wall, Tier tier, Layout.Run run, long largest) {
	}

	/** Returns one entry for a gap that is refused, at the stretch that could take most; none when the room may choose. */
	List<PlainStretch> refusals(Layout layout) {
		if (site.brief().gap().isEmpty()) {
			return List.of();
		}
		long asked = site.brief().gap().orElseThrow().units();
		Optional<Stretch> best = stretches(layout).stream().filter(stretch -> stretch.largest() > 0)
				.max(Comparator.comparingLong(Stretch::largest));
		if (best.isEmpty()) {
			return List.of();
		}
		long largest = best.get().largest();
		PracticeDefaults practice = new PracticeDefaults(site.brief().units());
		if (site.task().strips() == null) {
			return layout.score().frames() == 0 && largest < asked && asked > practice.wideGapMost().units()
					? refusal(best.get(), wording.bind(Messages.GapCheck_NoFrame, new Length(asked)), Messages.GapCheck_Largest)
					: List.of();
		}
		return largest < asked
				? refusal(best.get(), wording.bind(Messages.GapCheck_FieldTooWide, new Length(asked)), Messages.GapCheck_WidestField)
				: List.of();
	}

	/** Returns what to say of a gap that is meant for frames where there are strips; empty when there is nothing to say. */
	String note() {
		Length asked = site.brief().fixedGap();
		long least = site.task().limits().least();
		return site.task().strips() == null || asked == null || asked.units() >= least ? "" //$NON-NLS-1$
				: NLS.bind(Messages.GapCheck_FieldTooNarrow, wording.length(asked.units()), wording.length(least));
	}

	/** The largest gap is told as a mark of the tape that it reaches, so that it does fit. */
	private List<PlainStretch> refusal(Stretch stretch, String reason, String nearest) {
		long mark = site.brief().units().tapeMark().units();
		Length onTape = new Length(Math.floorDiv(stretch.largest(), mark) * mark);
		return List.of(new PlainStretch(stretch.wall(), new Length(stretch.run().x0()), new Length(stretch.run().x1()), stretch.tier(),
				reason, wording.bind(nearest, onTape)));
	}

	private List<Stretch> stretches(Layout layout) {
		List<Stretch> stretches = new ArrayList<>();
		for (int w = 0; w < site.walls().size(); w++) {
			WallSite wall = site.walls().get(w);
			for (int b = 0; b < wall.tiers().size(); b++) {
				Layout.Filled filled = layout.walls().get(w).get(b);
				if (!filled.band().isPart()) {
					Tier tier = wall.tiers().get(b);
					filled.runs().forEach(run -> stretches.add(new Stretch(wall.wall(), tier, run, largest(wall, filled.band(), run, layout))));
				}
			}
		}
		return stretches;
	}

	private long largest(WallSite wall, Band band, Layout.Run run, Layout layout) {
		if (site.task().strips() != null) {
			return new Expectation(site.task(), wall.task(), band, layout).widest(run.x0(), run.x1());
		}
		long least = site.task().limits().least();
		long across = (run.x1() - run.x0() - least) / 2;
		long height = Math.min(band.top().at(run.x0()) - band.bottom().at(run.x0()), band.top().at(run.x1()) - band.bottom().at(run.x1()));
		return site.brief().fixedGapY() == null ? Math.min(across, (height - least) / 2) : across;
	}
}
