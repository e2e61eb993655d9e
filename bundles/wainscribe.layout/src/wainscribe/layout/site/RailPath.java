// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.site;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import wainscribe.layout.solver.Band;
import wainscribe.layout.solver.Box;
import wainscribe.layout.solver.Island;
import wainscribe.layout.solver.Line;
import wainscribe.layout.solver.WallTask;
import wainscribe.model.length.Length;
import wainscribe.model.outline.WallShape;

/** Where the rail runs on a wall, and what it hits. */
final class RailPath {

	private final WallShape shape;
	private final WallTask task;

	RailPath(WallShape shape, WallTask task) {
		this.shape = shape;
		this.task = task;
	}

	/** A stretch of rail between barriers, from the wall's left end. */
	record Stretch(long x0, long x1) {
	}

	/** Returns the stretches of a rail between two heights above the floor line. */
	List<Stretch> stretches(long bottom, long top) {
		Band band = band(bottom, top);
		List<Stretch> stretches = new ArrayList<>();
		long from = 0;
		List<Box> boxes = task.barriers().stream().map(barrier -> barrier.blocked(0, 0)).filter(band::isReachedBy)
				.sorted(Comparator.comparingLong(Box::x0)).toList();
		for (Box box : boxes) {
			if (box.x0() > from) {
				stretches.add(new Stretch(from, box.x0()));
			}
			from = Math.max(from, box.x1());
		}
		if (from < band.x1()) {
			stretches.add(new Stretch(from, band.x1()));
		}
		return stretches;
	}

	/** Returns the leftmost island that the rail comes too near to. */
	Optional<Island> firstHit(long bottom, long top) {
		List<Stretch> stretches = stretches(bottom, top);
		return task.islands().stream().filter(island -> stretches.stream().anyMatch(stretch -> isHit(island, stretch, bottom, top)))
				.findFirst();
	}

	/** Returns the islands' heights between which the top of the rail may not lie, relative to the floor line. */
	long lowestClearTop(Island island) {
		return island.outline().y0() - Math.max(1, island.margin()) - floor(island.outline().x0());
	}

	/** Returns the least height of the rail's underside that clears an island from above, relative to the floor line. */
	long highestClearBottom(Island island) {
		return island.outline().y1() + Math.max(1, island.margin()) - floor(island.outline().x1());
	}

	private long floor(long x) {
		return shape.floorAt(new Length(x)).units();
	}

	private boolean isHit(Island island, Stretch stretch, long bottom, long top) {
		Band band = band(bottom, top);
		Band part = new Band(band.bottom(), band.top(), stretch.x0(), stretch.x1(), false, List.of());
		return part.isReachedBy(island.outline().grown(Math.max(1, island.margin())));
	}

	private Band band(long bottom, long top) {
		long length = shape.length().units();
		Line floor = new Line(0, shape.floorRight().units(), Math.max(1, length));
		return new Band(floor.up(bottom), floor.up(top), 0, length, false, List.of());
	}
}
