// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.LongUnaryOperator;

import org.eclipse.osgi.util.NLS;

import wainscribe.layout.PlainStretch;
import wainscribe.layout.Tier;
import wainscribe.layout.solver.Island;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.model.outline.WallShape;

/** Refuses a rail that hits a plate, a grille or another fixture, or the ceiling, and names the nearest heights that do not. */
final class RailCheck {

	private static final int MOST_MOVES = 1_000;

	private final RoomSite site;
	private final List<RailPath> paths;
	private final long lowestCeiling;
	private final long face;
	private final long mark;

	RailCheck(RoomSite site) {
		this.site = site;
		paths = site.walls().stream().map(wall -> new RailPath(WallShape.of(wall.wall()), wall.task())).toList();
		face = site.brief().rail().face().units();
		mark = site.brief().units().tapeMark().units();
		lowestCeiling = site.room().getWalls().stream().mapToLong(RailCheck::clearHeight).filter(height -> height > 0).min()
				.orElse(Long.MAX_VALUE);
	}

	/** A wall that slopes to a point does not forbid a rail: it ends where the slope meets it. */
	private static long clearHeight(Wall wall) {
		WallShape shape = WallShape.of(wall);
		return shape.ceilingLeft().max(shape.ceilingRight().minus(shape.floorRight())).units();
	}

	/** Tells whether a rail with this top hits nothing in the room. */
	boolean isClearAt(long top) {
		return top <= lowestCeiling && paths.stream().allMatch(path -> path.firstHit(top - face, top).isEmpty());
	}

	/** Returns one entry for each wall on which the rail is refused; none for a pattern without a rail. */
	List<PlainStretch> refusals(Wording wording) {
		List<PlainStretch> refusals = new ArrayList<>();
		long top = site.brief().railTop().units();
		for (int i = 0; site.pattern().hasRail() && i < paths.size(); i++) {
			Wall wall = site.walls().get(i).wall();
			long height = clearHeight(wall);
			Optional<Island> hit = paths.get(i).firstHit(top - face, top);
			if (height > 0 && top > height) {
				refusals.add(new PlainStretch(wall, Length.ZERO, WallShape.of(wall).length(), Tier.LOWER,
						NLS.bind(Messages.PlainStretches_RailAboveCeiling, wording.length(top), wording.length(height)), "")); //$NON-NLS-1$
			} else if (isInBase(top)) {
				refusals.add(new PlainStretch(wall, Length.ZERO, WallShape.of(wall).length(), Tier.LOWER,
						NLS.bind(Messages.PlainStretches_RailInBase, new Object[] { wording.length(top - face), wording.length(top),
								wording.length(site.heights().baseTop().units()) }),
						"")); //$NON-NLS-1$
			} else if (hit.isPresent()) {
				Island island = hit.get();
				refusals.add(new PlainStretch(wall, new Length(island.outline().x0()), new Length(island.outline().x1()), Tier.LOWER,
						NLS.bind(Messages.PlainStretches_RailHits, new Object[] { wording.length(top - face), wording.length(top),
								wording.thing(site.walls().get(i).elements().get(island.element())) }),
						nearest(wording, top)));
			}
		}
		return refusals;
	}

	private boolean isInBase(long top) {
		return top - face < site.heights().baseTop().units();
	}

	private String nearest(Wording wording, long top) {
		List<String> heights = new ArrayList<>();
		clear(top, this::lower).ifPresent(height -> heights.add(wording.length(height)));
		clear(top, this::higher).ifPresent(height -> heights.add(wording.length(height)));
		return switch (heights.size()) {
		case 0 -> ""; //$NON-NLS-1$
		case 1 -> NLS.bind(Messages.PlainStretches_NearestRail, heights.get(0));
		default -> NLS.bind(Messages.PlainStretches_NearestRails, heights.get(0), heights.get(1));
		};
	}

	/** Moves the rail from island to island until it is clear. */
	private Optional<Long> clear(long from, LongUnaryOperator move) {
		long top = from;
		for (int i = 0; i < MOST_MOVES; i++) {
			if (top <= face || top > lowestCeiling) {
				return Optional.empty();
			}
			if (isClearAt(top)) {
				return Optional.of(top);
			}
			top = move.applyAsLong(top);
		}
		return Optional.empty();
	}

	private long lower(long top) {
		long next = top - 1;
		for (RailPath path : paths) {
			Optional<Island> hit = path.firstHit(top - face, top);
			if (hit.isPresent()) {
				next = Math.min(next, path.lowestClearTop(hit.get()));
			}
		}
		return Math.floorDiv(next, mark) * mark;
	}

	private long higher(long top) {
		long next = top + 1;
		for (RailPath path : paths) {
			Optional<Island> hit = path.firstHit(top - face, top);
			if (hit.isPresent()) {
				next = Math.max(next, path.highestClearBottom(hit.get()) + face);
			}
		}
		return -Math.floorDiv(-next, mark) * mark;
	}
}
