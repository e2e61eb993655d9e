// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.site;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import wainscribe.layout.FrameOutline;
import wainscribe.layout.FrameRole;
import wainscribe.layout.RunLayout;
import wainscribe.layout.Tier;
import wainscribe.layout.WallLayout;
import wainscribe.layout.solver.Band;
import wainscribe.layout.solver.Bay;
import wainscribe.layout.solver.Layout;
import wainscribe.layout.solver.Quad;
import wainscribe.model.length.Length;
import wainscribe.model.outline.WallShape;

/**
 * Writes a solved wall as runs and frames with names.
 * <p>
 * A frame is named by its wall, a letter for its tier (L lower, U upper, F full, B below and O over an opening, E extra) and
 * its number from the left: {@code A-L2}.
 */
final class WallAssembly {

	private final WallSite site;
	private final String wallName;
	private final RunReasons reasons;
	private final Layout layout;
	private final StripAssembly strips;
	private final Map<Tier, Integer> numbers = new HashMap<>();

	/**
	 * Creates the assembly of a wall.
	 *
	 * @param strips names its strips, null for frames
	 */
	WallAssembly(WallSite site, String wallName, Layout layout, RunReasons reasons, StripAssembly strips) {
		this.strips = strips;
		this.site = site;
		this.wallName = wallName;
		this.layout = layout;
		this.reasons = reasons;
	}

	WallLayout wall(List<Layout.Filled> tiers) {
		List<RunLayout> runs = new ArrayList<>();
		List<RunLayout> under = new ArrayList<>();
		List<RunLayout> over = new ArrayList<>();
		for (int i = 0; i < tiers.size(); i++) {
			Layout.Filled filled = tiers.get(i);
			Tier tier = site.tiers().get(i);
			if (!filled.band().placed().isEmpty()) {
				runs.add(placed(tier, filled.band()));
			}
			addRuns(filled.band().isPart() ? tier == Tier.OVER ? over : under : runs, tier, filled);
			for (Bay bay : filled.bays()) {
				(bay.over() ? over : under).add(bay(bay));
			}
		}
		runs.addAll(numbered(under));
		runs.addAll(numbered(over));
		return new WallLayout(site.wall(), runs);
	}

	private void addRuns(List<RunLayout> runs, Tier tier, Layout.Filled filled) {
		Band band = filled.band();
		long end = WallShape.of(site.wall()).length().units();
		boolean cut = !band.isPart() && !band.isLevel() && band.x0() < band.x1() && band.placed().isEmpty();
		if (cut && band.x0() > 0) {
			runs.add(stretch(tier, band, 0, band.x0(), List.of(), Messages.RunReasons_SlopeTooLow));
		}
		filled.runs().forEach(run -> runs.add(run(tier, filled, run)));
		if (cut && band.x1() < end) {
			runs.add(stretch(tier, band, band.x1(), end, List.of(), Messages.RunReasons_SlopeTooLow));
		}
	}

	private RunLayout run(Tier tier, Layout.Filled filled, Layout.Run run) {
		if (strips != null) {
			Band band = filled.band();
			return new RunLayout(tier, new Length(run.x0()), new Length(run.x1()), new Length(band.bottom().at(run.x0())),
					new Length(band.top().at(run.x0())), List.of(), strips.of(tier, run), reasons.of(site, filled, run));
		}
		List<FrameOutline> frames = run.frames().stream()
				.map(quad -> frame(tier, run.anchor() ? FrameRole.ANCHOR : FrameRole.RUN, quad)).toList();
		long x0 = run.anchor() ? run.x0() - layout.gap() : run.x0();
		long x1 = run.anchor() ? run.x1() + layout.gap() : run.x1();
		return stretch(tier, filled.band(), x0, x1, frames, reasons.of(site, filled, run));
	}

	/** The tier holds exactly the placed frames, so its run is the whole wall. */
	private RunLayout placed(Tier tier, Band band) {
		List<FrameOutline> frames = band.placed().stream().sorted(Comparator.comparingLong(Quad::x).thenComparingLong(Quad::y))
				.map(quad -> frame(tier, FrameRole.PLACED, quad)).toList();
		return stretch(tier, band, Math.min(band.x0(), band.x1()), Math.max(band.x0(), band.x1()), frames, ""); //$NON-NLS-1$
	}

	private RunLayout bay(Bay bay) {
		Tier tier = bay.over() ? Tier.OVER : Tier.UNDER;
		long x0 = bay.frame().x() - layout.gap();
		long x1 = bay.frame().x() + bay.frame().width() + layout.gap();
		List<FrameOutline> frames = bay.legal() ? List.of(outline("", tier, FrameRole.BAY, bay.frame())) : List.of(); //$NON-NLS-1$
		return new RunLayout(tier, new Length(x0), new Length(x1), new Length(bay.bottom().at(x0)), new Length(bay.top().at(x0)),
				frames, bay.legal() ? "" : reasons.of(site, bay)); //$NON-NLS-1$
	}

	/** Bays of several tiers share a letter, so they are numbered when all are known. */
	private List<RunLayout> numbered(List<RunLayout> bays) {
		return bays.stream().sorted(Comparator.comparing(RunLayout::x0).thenComparing(RunLayout::y0))
				.map(bay -> new RunLayout(bay.tier(), bay.x0(), bay.x1(), bay.y0(), bay.y1(),
						bay.frames().stream().map(frame -> new FrameOutline(id(bay.tier()), frame.tier(), frame.role(), frame.x(),
								frame.y(), frame.width(), frame.height(), frame.rise(), frame.riseTop())).toList(),
						strips == null ? List.of() : strips.numbered(bay.strips()), bay.reason()))
				.toList();
	}

	private static RunLayout stretch(Tier tier, Band band, long x0, long x1, List<FrameOutline> frames, String reason) {
		return new RunLayout(tier, new Length(x0), new Length(x1), new Length(band.bottom().at(x0)), new Length(band.top().at(x0)),
				frames, reason);
	}

	private FrameOutline frame(Tier tier, FrameRole role, Quad quad) {
		return outline(id(tier), tier, role, quad);
	}

	private static FrameOutline outline(String id, Tier tier, FrameRole role, Quad quad) {
		return new FrameOutline(id, tier, role, new Length(quad.x()), new Length(quad.y()), new Length(quad.width()),
				new Length(quad.height()), new Length(quad.rise()), new Length(quad.riseTop()));
	}

	private String id(Tier tier) {
		return wallName + '-' + letter(tier) + numbers.merge(tier, 1, Integer::sum);
	}

	static char letter(Tier tier) {
		return switch (tier) {
		case LOWER -> 'L';
		case UPPER -> 'U';
		case FULL -> 'F';
		case UNDER -> 'B';
		case OVER -> 'O';
		case EXTRA -> 'E';
		};
	}
}
