// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.site;

import java.util.List;

import wainscribe.layout.solver.Band;
import wainscribe.layout.solver.Layout;
import wainscribe.model.length.Length;

/**
 * The clear distances of a room in one number each: the gaps of frames, or the fields between strips. Fields differ from run
 * to run; shown is that of the run that has most of them, the first of equal ones.
 */
record ClearFields(RoomSite site) {

	/** Returns the clear distance along the wall. */
	Length gap(Layout layout) {
		if (site.task().strips() == null) {
			return new Length(layout.gap());
		}
		Layout.Run most = null;
		for (List<Layout.Filled> wall : layout.walls()) {
			for (Layout.Filled tier : wall) {
				for (Layout.Run run : tier.runs()) {
					most = run.count() > (most == null ? 0 : most.count()) && !tier.band().isPart() ? run : most;
				}
			}
		}
		return most == null ? Length.ZERO : field(most);
	}

	private Length field(Layout.Run run) {
		long strips = run.frames().size() * site.task().limits().face();
		return new Length((run.x1() - run.x0() - strips) / run.count());
	}

	/** Returns the clear distance above and below frames, or the height of a row of fields of a grid. */
	Length gapY(Layout layout) {
		if (site.task().strips() == null || layout.rows() == 1) {
			return new Length(layout.gapY());
		}
		return layout.walls().stream().flatMap(List::stream).filter(tier -> tier.runs().stream().anyMatch(run -> run.count() > 0))
				.findFirst().map(tier -> new Length(row(tier.band(), layout.rows()))).orElse(Length.ZERO);
	}

	private long row(Band band, int rows) {
		return Math.max(0, (band.top().at(band.x0()) - band.bottom().at(band.x0()) - (rows - 1) * site.task().limits().face()) / rows);
	}
}
