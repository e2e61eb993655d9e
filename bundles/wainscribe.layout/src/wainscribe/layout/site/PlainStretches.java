// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.site;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.osgi.util.NLS;

import wainscribe.layout.PlainStretch;
import wainscribe.layout.Tier;
import wainscribe.layout.solver.Band;
import wainscribe.layout.solver.BarredCounts;
import wainscribe.layout.solver.Layout;
import wainscribe.layout.solver.RoomTask;
import wainscribe.model.length.Length;
import wainscribe.model.outline.WallShape;

/** Names the stretches that stay plain although they are long enough for a frame, with what bars every number of frames. */
final class PlainStretches {

	private final RoomSite site;
	private final List<Long> gaps;
	private final Wording wording;

	PlainStretches(RoomSite site, List<Long> gaps, Wording wording) {
		this.site = site;
		this.gaps = gaps;
		this.wording = wording;
	}

	/**
	 * Returns the plain stretches of a layout.
	 *
	 * @param nearest a sentence about the nearest request that leaves none, or empty
	 */
	List<PlainStretch> of(Layout layout, String nearest) {
		List<PlainStretch> plain = new ArrayList<>();
		for (int w = 0; w < site.walls().size(); w++) {
			WallSite wall = site.walls().get(w);
			for (int b = 0; b < wall.tiers().size(); b++) {
				Layout.Filled filled = layout.walls().get(w).get(b);
				Tier tier = wall.tiers().get(b);
				if (filled.band().isPart()) {
					continue;
				}
				if (isUnmeasured(wall, filled.band())) {
					plain.add(new PlainStretch(wall.wall(), Length.ZERO, WallShape.of(wall.wall()).length(), tier,
							Messages.PlainStretches_HeightUnknown, "")); //$NON-NLS-1$
					continue;
				}
				for (Layout.Run run : filled.runs()) {
					if (run.frameable() && run.count() == 0 && !isRailInBase()) {
						plain.add(new PlainStretch(wall.wall(), new Length(run.x0()), new Length(run.x1()), tier,
								reason(wall, filled.band(), run, layout), nearest));
					}
				}
			}
		}
		return plain;
	}

	/** Then the rail is refused on every wall, and nothing more needs saying. */
	private boolean isRailInBase() {
		return site.pattern().hasRail() && site.heights().railBottom().isLessThan(site.heights().baseTop());
	}

	private String rowsTooLow(long height) {
		RoomTask task = site.task();
		int rows = task.rows().get(0);
		return NLS.bind(Messages.PlainStretches_RowsTooLow, new Object[] { wording.length(height), rows,
				wording.length(rows * task.limits().least() + (rows - 1) * task.limits().face()) });
	}

	private static boolean isUnmeasured(WallSite wall, Band band) {
		WallShape shape = WallShape.of(wall.wall());
		return band.placed().isEmpty() && shape.ceilingLeft().signum() == 0 && shape.ceilingRight().equals(shape.floorRight())
				&& band.top().at(0) <= 0;
	}

	private String reason(WallSite wall, Band band, Layout.Run run, Layout layout) {
		RoomTask task = site.task();
		long height = Math.max(band.top().at(run.x0()) - band.bottom().at(run.x0()),
				band.top().at(run.x1()) - band.bottom().at(run.x1()));
		if (height <= 0 && site.pattern().hasRail()) {
			long railTop = site.heights().railTop().units();
			return NLS.bind(Messages.PlainStretches_RailUnderBase, new Object[] {
					wording.length(site.heights().railBottom().units()), wording.length(railTop),
					wording.length(site.heights().baseTop().units()) });
		}
		if (height < task.limits().least() + 2 * layout.gapY()) {
			return NLS.bind(task.strips() == null ? Messages.PlainStretches_TooLow : Messages.PlainStretches_TooLowForStrips, wording.length(Math.max(0, height)),
					wording.length(task.limits().least() + 2 * layout.gapY()));
		}
		BarredCounts barred = new BarredCounts(task, wall.task(), band, gaps, run.x0(), run.x1());
		if (barred.byIsland().isEmpty()) {
			return barred.isStockTooShort() ? NLS.bind(Messages.PlainStretches_StockTooShort, wording.length(task.limits().longest()))
					: task.strips() == null ? Messages.PlainStretches_NothingFits : rowsTooLow(height);
		}
		return new BarredWording(wording, gaps, task).sentence(wall.elements(), barred);
	}
}
