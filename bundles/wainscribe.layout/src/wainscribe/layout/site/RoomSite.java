// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.site;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

import wainscribe.layout.EffectiveBrief;
import wainscribe.layout.brief.PracticeDefaults;
import wainscribe.layout.clearance.Blockers;
import wainscribe.layout.glass.GlassFrame;
import wainscribe.layout.pattern.StripRhythm;
import wainscribe.layout.pattern.TierBand;
import wainscribe.layout.pattern.TrimHeights;
import wainscribe.layout.pattern.WallPattern;
import wainscribe.layout.solver.Limits;
import wainscribe.layout.solver.RoomTask;
import wainscribe.layout.solver.StripSizes;
import wainscribe.layout.solver.WallTask;
import wainscribe.model.Home;
import wainscribe.model.Room;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;

/**
 * A room as a layout problem.
 * <p>
 * The gaps tried when none is asked for, in the unit of the home: every 1 mm from 70 to 90 mm, or every 1/16 in from 2 3/4
 * to 3 1/2 in; when a frameable stretch stays plain at all of these, every 1 mm from 50 to 190 mm, or every 1/16 in from 2 to
 * 7 1/2 in. The default gap (80 mm, 3 in) is one of them.
 *
 * @param home    the home
 * @param room    the room
 * @param brief   the decisions
 * @param pattern the pattern
 * @param heights the heights that run round the room
 * @param walls   the walls in walking order
 * @param task    the problem
 */
public record RoomSite(Home home, Room room, EffectiveBrief brief, WallPattern pattern, TrimHeights heights, List<WallSite> walls,
		RoomTask task) {

	private static final int FACES_IN_LEAST_WIDTH = 4;

	/** Sets up the problem of a room. */
	public static RoomSite of(Home home, Room room, EffectiveBrief brief, WallPattern pattern) {
		TrimHeights heights = Heights.of(room, brief);
		List<TierBand> bands = pattern.bands(heights);
		Length railTop = pattern.hasRail() ? heights.railTop() : null;
		PracticeDefaults practice = new PracticeDefaults(brief.units());
		Limits limits = limits(brief, practice, pattern);
		StripSizes strips = pattern.strips().map(rhythm -> strips(brief, practice, rhythm, limits.least())).orElse(null);
		List<WallSite> walls = room.getWalls().stream()
				.map(wall -> WallSite.of(wall, survey(home, room, brief, wall), bands, railTop, limits, strips)).toList();
		List<WallTask> tasks = walls.stream().map(WallSite::task).toList();
		RoomTask task = strips == null ? frames(brief, practice, limits, tasks)
				: new RoomTask(tasks, limits, 0, 0, List.of(0L), List.of(), strips);
		return new RoomSite(home, room, brief, pattern, heights, walls, task);
	}

	/** Sets up the problem of the same room with other decisions. */
	RoomSite with(EffectiveBrief other) {
		return of(home, room, other, pattern);
	}

	private static WallSurvey survey(Home home, Room room, EffectiveBrief brief, Wall wall) {
		return new WallSurvey(wall, Blockers.isCombustible(brief.material()),
				fixture -> GlassFrame.covered(home, room, brief, fixture));
	}

	private static RoomTask frames(EffectiveBrief brief, PracticeDefaults practice, Limits limits, List<WallTask> walls) {
		List<Long> gaps = brief.gap().map(gap -> List.of(Math.max(0, gap.units())))
				.orElseGet(() -> range(practice.usualGapLeast(), practice.usualGapMost(), practice.gapStep()));
		List<Long> wide = brief.gap().isPresent() ? List.of()
				: range(practice.wideGapLeast(), practice.wideGapMost(), practice.gapStep());
		return new RoomTask(walls, limits, brief.fixedGapY() == null ? -1 : Math.max(0, brief.fixedGapY().units()),
				practice.gap().units(), gaps, wide);
	}

	/** A gap asked for is the width of the fields between strips that is aimed at; one too narrow for that is meant for frames. */
	private static StripSizes strips(EffectiveBrief brief, PracticeDefaults practice, StripRhythm rhythm, long least) {
		List<Integer> rows = IntStream.rangeClosed(rhythm.fewestRows(), rhythm.mostRows()).boxed().toList();
		return new StripSizes(rhythm.boardsAtEnds(), rows, practice.usualFieldLeast().units(), practice.usualFieldMost().units(),
				brief.gap().map(Length::units).filter(gap -> gap >= least).orElse(-1L));
	}

	private static Limits limits(EffectiveBrief brief, PracticeDefaults practice, WallPattern pattern) {
		long face = Math.max(0, brief.frame().face().units());
		boolean strips = pattern.strips().isPresent();
		long least = strips ? Math.max(practice.leastField().units(), face)
				: Math.max(practice.leastFrame().units(), FACES_IN_LEAST_WIDTH * face);
		return new Limits(face, least, brief.longestStock().map(Length::units).orElse(Limits.UNLIMITED), units(brief.widthMin()),
				units(brief.widthMax()), strips ? 1 : pattern.rhythm().centre());
	}

	private static long units(Length wish) {
		return wish == null ? -1 : wish.units();
	}

	private static List<Long> range(Length least, Length most, Length step) {
		List<Long> gaps = new ArrayList<>();
		for (long gap = least.units(); gap <= most.units(); gap += step.units()) {
			gaps.add(gap);
		}
		return gaps;
	}
}
