// SPDX-License-Identifier: EPL-2.0
package wainscribe.profile.section;

import java.util.ArrayList;
import java.util.List;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;

import wainscribe.model.length.Length;

/** Sound sections of all kinds of segments: steps along the wall at changing heights, joined by lines, arcs and curves. */
final class ArbitrarySections {

	private ArbitrarySections() {
	}

	/** One step of a face: how far along, how high it ends, and by what it gets there. */
	private record Step(int dx, int height, int kind, int bend) {
	}

	static Arbitrary<ProfileSection> sound() {
		Arbitrary<Step> step = Combinators.combine(Arbitraries.integers().between(40_001, 90_001),
				Arbitraries.integers().between(30_000, 120_000), Arbitraries.integers().between(0, 2),
				Arbitraries.integers().between(-9_000, 9_000)).as(Step::new);
		return step.list().ofMinSize(1).ofMaxSize(7).map(ArbitrarySections::drawn)
				.filter(section -> new SectionCheck().faults(section).isEmpty());
	}

	private static ProfileSection drawn(List<Step> steps) {
		SectionPath path = SectionPath.atOrigin().out(new Length(60_000));
		for (Step step : new ArrayList<>(steps)) {
			Length dx = new Length(step.dx());
			Length dy = new Length(step.height()).minus(path.pen().y());
			switch (step.kind()) {
				case 0 -> path.line(dx, dy);
				case 1 -> path.arc(dx, dy, new Length(step.bend() == 0 ? 1 : step.bend()));
				default -> path.curve(new SectionPoint(dx.dividedBy(3), new Length(step.bend())),
						new SectionPoint(dx.times(2).dividedBy(3), dy.plus(new Length(step.bend()))), new SectionPoint(dx, dy));
			}
		}
		return path.out(path.pen().y().negated()).section();
	}
}
