// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.site;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.eclipse.osgi.util.NLS;

import wainscribe.layout.Objective;
import wainscribe.layout.PlainStretch;
import wainscribe.layout.RailBand;
import wainscribe.layout.RoomLayout;
import wainscribe.layout.RunLayout;
import wainscribe.layout.WallLayout;
import wainscribe.layout.solver.Layout;
import wainscribe.layout.solver.Rank;
import wainscribe.layout.solver.RoomSolver;
import wainscribe.layout.solver.Score;
import wainscribe.layout.solver.StripSizes;
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
	 * @param advised whether to look for alternatives and nearest requests as well, which takes longer
	 */
	public RoomLayout layout(boolean advised) {
		RoomSolver.Answer answer = new RoomSolver(site.task()).best();
		Layout layout = answer.layout();
		long rank = layout.score().rank();
		boolean trouble = advised && (Rank.plain(rank) > 0 || Rank.splits(rank) > 0);
		NearestRequest nearest = new NearestRequest(site);
		Optional<Length> rail = trouble ? nearest.rail() : Optional.empty();
		Optional<Length> gap = trouble ? nearest.gap(layout.gap(), answer.gaps()) : Optional.empty();
		List<PlainStretch> infeasible = new ArrayList<>(new RailCheck(site).refusals(wording));
		infeasible.addAll(new PlainStretches(site, answer.gaps(), wording).of(layout, sentence(rail, gap)));
		List<WallLayout> walls = noted(walls(layout, answer.gaps()), layout);
		infeasible.addAll(new GapCheck(site, wording).refusals(layout));
		ClearFields fields = new ClearFields(site);
		return new RoomLayout(site.room(), site.brief().pattern(), site.brief().material(), fields.gap(layout), fields.gapY(layout), rail(),
				site.brief().frame(), walls, objective(layout.score()), site.task().isCountable(),
				advised ? new Alternatives(site, answer, wording).all(rail, gap) : List.of(), infeasible);
	}

	/** A gap outside the usual range is said at the first run, where a drawing and a report begin. */
	private List<WallLayout> noted(List<WallLayout> walls, Layout layout) {
		String narrow = new GapCheck(site, wording).note();
		if (!narrow.isEmpty()) {
			return noted(walls, narrow);
		}
		List<Long> usual = site.task().gaps();
		if (usual.size() == 1 || layout.gap() >= usual.get(0) && layout.gap() <= usual.get(usual.size() - 1)) {
			return walls;
		}
		String note = NLS.bind(Messages.RunReasons_WideGap, new Object[] { wording.length(usual.get(0)),
				wording.length(usual.get(usual.size() - 1)), wording.length(layout.gap()) });
		return noted(walls, note);
	}

	private static List<WallLayout> noted(List<WallLayout> walls, String note) {
		List<WallLayout> all = new ArrayList<>(walls);
		for (int w = 0; w < all.size(); w++) {
			List<RunLayout> runs = new ArrayList<>(all.get(w).runs());
			if (!runs.isEmpty()) {
				RunLayout run = runs.get(0);
				String reason = run.reason().isEmpty() ? note : note + ' ' + run.reason();
				runs.set(0, run.withReason(reason));
				all.set(w, new WallLayout(all.get(w).wall(), runs));
				return all;
			}
		}
		return walls;
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

	/**
	 * Returns the walls of a layout in walking order.
	 *
	 * @param gaps the gaps it was chosen from
	 */
	List<WallLayout> walls(Layout layout, List<Long> gaps) {
		RunReasons reasons = new RunReasons(site.task(), layout, gaps, wording);
		Set<String> names = new HashSet<>();
		StripSizes strips = site.task().strips();
		List<WallLayout> walls = new ArrayList<>();
		for (int i = 0; i < site.walls().size(); i++) {
			WallSite wall = site.walls().get(i);
			String name = wall.wall().getName() == null ? String.valueOf(i + 1) : wall.wall().getName();
			String unique = names.contains(name) ? name + '/' + (i + 1) : name;
			names.add(unique);
			walls.add(new WallAssembly(wall, unique, layout, reasons, strips == null ? null : new StripAssembly(unique, strips)).wall(layout.walls().get(i)));
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
