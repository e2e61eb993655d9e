// SPDX-License-Identifier: EPL-2.0
package wainscribe.examples.rule;

import wainscribe.model.Fixture;
import wainscribe.model.FixtureType;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.rules.RuleCheck;
import wainscribe.rules.RuleContext;
import wainscribe.rules.Subject;
import wainscribe.rules.measure.SurveyedOutline;
import wainscribe.rules.measure.WallStrips;

/**
 * Example of a check: finds pictures that hang on a moulding or crowd it.
 * <p>
 * Id, weight, source and figures of the rule stand in plugin.xml. The check asks the context for its figure and for the room,
 * measures, and reports each picture once, with the figure found and the figure wanted.
 */
public final class ArtOnMouldingCheck implements RuleCheck {

	@Override
	public void check(RuleContext context) {
		for (Wall wall : context.walls()) {
			WallStrips strips = WallStrips.of(context.design(), wall);
			wall.getFixtures().stream().filter(fixture -> fixture.getType() == FixtureType.ART)
					.forEach(art -> check(context, strips, art));
		}
	}

	private static void check(RuleContext context, WallStrips strips, Fixture art) {
		Length clear = context.length("clear"); //$NON-NLS-1$
		Subject picture = Subject.of(art);
		strips.nearest(SurveyedOutline.of(art)).filter(nearest -> nearest.gap().isLessThan(clear))
				.ifPresent(nearest -> context.report(picture, Messages.ArtOnMouldingCheck_Near, picture.element(),
						nearest.strip().name(), nearest.gap(), clear));
	}
}
