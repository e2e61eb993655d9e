// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToIntFunction;

import org.eclipse.osgi.util.NLS;

import wainscribe.layout.Alternative;
import wainscribe.layout.solver.Layout;
import wainscribe.layout.solver.Rank;
import wainscribe.layout.solver.RoomSolver;
import wainscribe.layout.solver.Score;
import wainscribe.model.length.Length;

/**
 * Finds the layouts worth showing beside the best: the best with fewer frames, the best with more if its widths lie closer
 * together, the best at the default gap, and where something stays plain or is parted, the one at the nearest rail height or
 * gap without that. They come from the same gaps as the best; in rooms of very many frames or splits those with fewer or more
 * frames come from its gap alone.
 */
final class Alternatives {

	private static final int MANY_FRAMES = 80;
	private static final int MANY_SPLITS = 12;

	private final RoomSite site;
	private final RoomSolver.Answer answer;
	private final Wording wording;

	Alternatives(RoomSite site, RoomSolver.Answer answer, Wording wording) {
		this.site = site;
		this.answer = answer;
		this.wording = wording;
	}

	List<Alternative> all(Optional<Length> nearestRail, Optional<Length> nearestGap) {
		List<Alternative> alternatives = new ArrayList<>();
		Layout best = answer.layout();
		Score score = best.score();
		boolean large = score.frames() > MANY_FRAMES || Rank.splits(score.rank()) > MANY_SPLITS;
		List<Long> gaps = large ? List.of(best.gap()) : answer.gaps();
		RoomSolver solver = new RoomSolver(site.task());
		if (score.frames() > 0) {
			solver.best(gaps, 0, score.frames() - 1).filter(this::isAsFull).ifPresent(layout -> alternatives.add(of(site, layout,
					bind(Messages.Alternatives_Fewer, parts(layout.score().frames()), parts(score.frames()),
							gap(layout), difference(layout.score())))));
			solver.best(gaps, score.frames() + 1, Integer.MAX_VALUE).filter(this::isAsFull)
					.filter(layout -> layout.score().tenths() < score.tenths())
					.ifPresent(layout -> alternatives.add(of(site, layout,
							bind(Messages.Alternatives_More, parts(layout.score().frames()), parts(score.frames()),
									gap(layout), excess(layout.score()),
									excess(score)))));
		}
		long usual = site.task().defaultGap();
		if (best.gap() != usual) {
			RoomSite atUsual = site.with(site.brief().withGap(new Length(usual)));
			alternatives.add(gap(atUsual, Messages.Alternatives_DefaultGap));
		}
		nearestGap.filter(gap -> gap.units() != usual || best.gap() == usual).ifPresent(gap -> alternatives
				.add(gap(site.with(site.brief().withGap(gap)), Messages.Alternatives_Gap)));
		nearestRail.ifPresent(rail -> alternatives.add(rail(site.with(site.brief().withRailTop(rail)))));
		return alternatives;
	}

	private String parts(int count) {
		return Wording.parts(count, site.task());
	}

	private String gap(Layout layout) {
		return wording.length(new ClearFields(site).gap(layout).units());
	}

	private boolean isAsFull(Layout layout) {
		return Rank.plain(layout.score().rank()) <= Rank.plain(answer.layout().score().rank());
	}

	private Alternative gap(RoomSite other, String sentence) {
		Layout layout = new RoomSolver(other.task()).best().layout();
		return of(other, layout, bind(sentence, wording.length(layout.gap()), wording.length(answer.layout().gap()),
				difference(layout.score())));
	}

	private Alternative rail(RoomSite other) {
		Layout layout = new RoomSolver(other.task()).best().layout();
		return of(other, layout, bind(Messages.Alternatives_Rail, wording.length(other.heights().railTop().units()),
				wording.length(site.heights().railTop().units()), difference(layout.score())));
	}

	private static Alternative of(RoomSite site, Layout layout, String sentence) {
		RoomAssembly assembly = new RoomAssembly(site);
		return new Alternative(sentence, new ClearFields(site).gap(layout), assembly.rail(), RoomAssembly.objective(layout.score()),
				assembly.walls(layout, List.of(layout.gap())));
	}

	/** Returns in words the first term in which another layout differs. */
	private String difference(Score other) {
		Score best = answer.layout().score();
		List<Term> terms = List.of(new Term(Rank::plain, Messages.Difference_Plain),
				new Term(Rank::splits, Messages.Difference_Splits), new Term(Rank::anchorsDropped, Messages.Difference_Anchors),
				new Term(Rank::near, Messages.Difference_Near), new Term(Rank::outOfBand, Messages.Difference_OutOfBand),
				new Term(Rank::offModule, Messages.Difference_OffModule));
		for (Term term : terms) {
			int here = term.count(best.rank());
			int there = term.count(other.rank());
			if (here != there) {
				return bind(term.sentence(), there, here);
			}
		}
		if (best.tenths() != other.tenths()) {
			return bind(best.tenths() < other.tenths() ? Messages.Difference_Excess : Messages.Difference_Closer,
					excess(other), excess(best));
		}
		return Messages.Difference_None;
	}

	private String excess(Score score) {
		return wording.exact(new Length(score.tenths() * 800));
	}

	private static String bind(String sentence, Object... values) {
		return NLS.bind(sentence, values);
	}

	private record Term(ToIntFunction<Long> reading, String sentence) {

		int count(long rank) {
			return reading.applyAsInt(rank);
		}
	}
}
