// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.trim;

import wainscribe.model.ExistingTrim;
import wainscribe.model.Opening;
import wainscribe.model.TrimType;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.model.outline.Outline;
import wainscribe.rules.RuleCheck;
import wainscribe.rules.RuleContext;
import wainscribe.rules.Subject;
import wainscribe.rules.measure.SurveyedOutline;

/** Finds doors whose casing is thinner than the kept base that meets it. */
public final class BaseProudOfCasingCheck implements RuleCheck {

	@Override
	public void check(RuleContext context) {
		for (Wall wall : context.walls()) {
			for (Opening opening : wall.getOpenings()) {
				Outline cased = SurveyedOutline.cased(opening);
				boolean measured = opening.getCasingDepth() != null && SurveyedOutline.orZero(opening.getCasing()).signum() > 0;
				Length thickest = wall.getTrims().stream().filter(trim -> isKeptBase(trim) && meets(trim, cased))
						.map(trim -> SurveyedOutline.orZero(trim.getDepth())).max(Length::compareTo).orElse(Length.ZERO);
				if (measured && thickest.isMoreThan(opening.getCasingDepth())) {
					Subject subject = Subject.of(opening);
					context.report(subject, Messages.BaseProudOfCasingCheck_Proud, subject.element(), thickest,
							opening.getCasingDepth());
				}
			}
		}
	}

	private static boolean isKeptBase(ExistingTrim trim) {
		return trim.getType() == TrimType.BASE && !Boolean.FALSE.equals(trim.getKeep());
	}

	private static boolean meets(ExistingTrim base, Outline cased) {
		Outline outline = SurveyedOutline.of(base);
		return outline.clearX(cased).signum() == 0 && outline.y1().isMoreThan(cased.y0());
	}
}
