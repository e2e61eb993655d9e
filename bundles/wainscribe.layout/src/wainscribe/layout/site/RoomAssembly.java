// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.site;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import wainscribe.layout.Objective;
import wainscribe.layout.PlainStretch;
import wainscribe.layout.RailBand;
import wainscribe.layout.RoomLayout;
import wainscribe.layout.WallLayout;
import wainscribe.layout.solver.Layout;
import wainscribe.layout.solver.Rank;
import wainscribe.layout.solver.RoomSolver;
import wainscribe.layout.solver.Score;
import wainscribe.model.Room;
import wainscribe.model.length.Length;

/** Solves a room and writes the answer in the words of layouts. */
public final class RoomAssembly {

	private final RoomSite site;
	private final Wording wording;

	/**
	 * Creates an assembly.
	 *
	 * @param site the room as a layout problem
	 */
	public RoomAssembly(RoomSite site) {
		this.site = site;
		wording = new Wording(site.brief().units());
	}

	/**
	 * Lays out a room.
	 *
	 * @param room    the room
	 * @param advised whether to look for alternatives and nearest requests as well, which takes longer
	 */
	public RoomLayout layout(Room room, boolean advised) {
		RoomSolver.Answer answer = new RoomSolver(site.task()).best();
		Layout layout = answer.layout();
		long rank = layout.score().rank();
		boolean trouble = advised && (Rank.plain(rank) > 0 || Rank.splits(rank) > 0);
		NearestRequest nearest = new NearestRequest(room, site);
		Optional<Length> rail = trouble ? nearest.rail() : Optional.empty();
		Optional<Length> gap = trouble ? nearest.gap() : Optional.empty();
		List<PlainStretch> infeasible = new ArrayList<>(new RailCheck(room, site).refusals(wording));
		infeasible.addAll(new PlainStretches(site, answer.gaps(), wording).of(layout, sentence(rail, gap)));
		return new RoomLayout(room, site.brief().pattern(), site.brief().material(), new Length(layout.gap()),
				new Length(layout.gapY()), rail(), site.brief().frame(), walls(layout), objective(layout.score()), true,
				advised ? new Alternatives(room, site, answer, wording).all(rail, gap) : List.of(), infeasible);
	}

	private String sentence(Optional<Length> rail, Optional<Length> gap) {
		List<String> sentences = new ArrayList<>();
		rail.ifPresent(top -> sentences.add(wording.bind(Messages.PlainStretches_NearestRail, top)));
		gap.ifPresent(value -> sentences.add(wording.bind(Messages.PlainStretches_NearestGap, value)));
		return String.join(" ", sentences); //$NON-NLS-1$
	}

	/** Returns the rail, null for a pattern without one. */
	RailBand rail() {
		return site.pattern().hasRail()
				? new RailBand(site.heights().railBottom(), site.heights().railTop(), site.brief().rail().thickness()) : null;
	}

	/** Returns the walls of a layout in walking order. */
	List<WallLayout> walls(Layout layout) {
		RunReasons reasons = new RunReasons(site.task(), layout, wording);
		Set<String> names = new HashSet<>();
		List<WallLayout> walls = new ArrayList<>();
		for (int i = 0; i < site.walls().size(); i++) {
			WallSite wall = site.walls().get(i);
			String name = wall.wall().getName() == null ? String.valueOf(i + 1) : wall.wall().getName();
			String unique = names.add(name) ? name : name + '/' + (i + 1);
			walls.add(new WallAssembly(wall, unique, layout, reasons).wall(layout.walls().get(i)));
		}
		return walls;
	}

	static Objective objective(Score score) {
		long rank = score.rank();
		return new Objective(Rank.plain(rank), Rank.splits(rank), Rank.anchorsDropped(rank), Rank.near(rank),
				Rank.outOfBand(rank), Rank.offModule(rank), BigDecimal.valueOf(score.tenths(), 1), score.frames(),
				new Length(score.gapShift()));
	}
}
