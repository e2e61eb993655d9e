// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import wainscribe.layout.RailBand;
import wainscribe.model.Fixture;
import wainscribe.model.FixtureType;
import wainscribe.model.Opening;
import wainscribe.model.OpeningKind;
import wainscribe.model.Placed;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.model.outline.Outline;
import wainscribe.model.outline.WallShape;
import wainscribe.rules.RuleCheck;
import wainscribe.rules.RuleContext;
import wainscribe.rules.Subject;
import wainscribe.rules.measure.SurveyedOutline;

/** Finds a rail that almost, but not quite, meets a sill, a stool, a tub deck or a counter on its wall. */
public final class RailNearMissCheck implements RuleCheck {

	private static final Set<FixtureType> WITH_TOP_LINE = EnumSet.of(FixtureType.TUB, FixtureType.VANITY, FixtureType.BASIN,
			FixtureType.SINK, FixtureType.CABINET);

	@Override
	public void check(RuleContext context) {
		context.layout().rail().ifPresent(rail -> context.walls().stream()
				.filter(wall -> !WallShape.of(wall).isFloorSloped()).forEach(wall -> check(context, rail, wall)));
	}

	private static void check(RuleContext context, RailBand rail, Wall wall) {
		for (Opening opening : wall.getOpenings()) {
			if (opening.getKind() == OpeningKind.WINDOW) {
				Outline cased = SurveyedOutline.cased(opening);
				check(context, rail, opening, List.of(SurveyedOutline.of(opening).y0(), cased.y0()));
			}
		}
		for (Fixture fixture : wall.getFixtures()) {
			if (WITH_TOP_LINE.contains(fixture.getType())) {
				check(context, rail, fixture, List.of(SurveyedOutline.of(fixture).y1()));
			}
		}
	}

	private static void check(RuleContext context, RailBand rail, Placed thing, List<Length> lines) {
		Length clear = context.length("clear"); //$NON-NLS-1$
		Length meets = context.length("meets"); //$NON-NLS-1$
		List<Length> misses = new ArrayList<>();
		for (Length line : lines) {
			Optional<Length> miss = miss(rail, line, meets, clear);
			if (miss.isPresent() && !miss.get().isMoreThan(meets)) {
				return;
			}
			miss.ifPresent(misses::add);
		}
		misses.stream().min(Comparator.naturalOrder())
				.ifPresent(miss -> context.report(Subject.of(thing), Messages.RailNearMissCheck_Edge,
						Subject.of(thing).element(), miss, clear));
	}

	/** Returns by how much the rail misses a line; empty where it clears it. A line behind the rail is never clear. */
	private static Optional<Length> miss(RailBand rail, Length line, Length meets, Length clear) {
		Length miss = rail.top().minus(line).abs().min(rail.bottom().minus(line).abs());
		boolean behind = rail.bottom().isLessThan(line) && line.isLessThan(rail.top());
		return behind || miss.isLessThan(clear) || !miss.isMoreThan(meets) ? Optional.of(miss) : Optional.empty();
	}
}
