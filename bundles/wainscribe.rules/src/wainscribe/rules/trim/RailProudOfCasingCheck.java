// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.trim;

import wainscribe.layout.RailBand;
import wainscribe.model.Opening;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.rules.RuleCheck;
import wainscribe.rules.RuleContext;
import wainscribe.rules.Subject;
import wainscribe.rules.measure.SurveyedOutline;
import wainscribe.rules.measure.WallStrips;

/** Finds doors and windows whose casing is thinner than the rail that dies into it. */
public final class RailProudOfCasingCheck implements RuleCheck {

	@Override
	public void check(RuleContext context) {
		context.layout().rail().ifPresent(rail -> {
			for (Wall wall : context.walls()) {
				WallStrips strips = WallStrips.of(context.design(), wall);
				wall.getOpenings().stream().filter(opening -> isMet(strips, opening))
						.forEach(opening -> check(context, rail, opening));
			}
		});
	}

	private static void check(RuleContext context, RailBand rail, Opening opening) {
		Subject subject = Subject.of(opening);
		if (opening.getCasingDepth() == null) {
			context.ask(subject, Messages.RailProudOfCasingCheck_Ask, subject.element(), rail.thickness());
		} else if (rail.thickness().isMoreThan(opening.getCasingDepth())) {
			context.report(subject, Messages.RailProudOfCasingCheck_Proud, subject.element(), rail.thickness(),
					opening.getCasingDepth(), rail.thickness().minus(opening.getCasingDepth()));
		}
	}

	private static boolean isMet(WallStrips strips, Opening opening) {
		Length casing = SurveyedOutline.orZero(opening.getCasing());
		return casing.signum() > 0 && strips.rail().stream()
				.anyMatch(strip -> strip.shape().gapTo(SurveyedOutline.cased(opening)).signum() == 0);
	}
}
