// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.measure;

import java.util.List;

import wainscribe.layout.RoomDesign;
import wainscribe.model.Fixture;
import wainscribe.model.FixtureType;
import wainscribe.model.HeatSource;
import wainscribe.model.length.Length;
import wainscribe.model.outline.Outline;

/**
 * How far runs of moulding that burns stop short of what is hot: 305 mm from an electric heater (`heater-clear`), 762 mm above
 * a cooktop (`cooktop-above`), 152 mm from a fire opening (`fireplace-irc`). This only says where runs end; the rules measure.
 */
final class HeatBelt {

	private static final Length FROM_HEATER = Length.ofMillimetres(305);
	private static final Length ABOVE_COOKTOP = Length.ofMillimetres(762);
	private static final Length FROM_FIRE = Length.ofMillimetres(152);

	private HeatBelt() {
	}

	/**
	 * Returns the outlines that a run keeps out of.
	 *
	 * @param design  the design of its room
	 * @param fixture one that stops moulding
	 * @param gap     what the run itself keeps from its end, as part of the distance
	 */
	static List<Outline> of(RoomDesign design, Fixture fixture, Length gap) {
		Outline outline = SurveyedOutline.of(fixture);
		if (fixture.getType() == FixtureType.HEATER && fixture.getHeat() == HeatSource.ELECTRIC) {
			return List.of(outline.grown(less(FROM_HEATER, gap)));
		}
		if (fixture.getType() == FixtureType.RANGE || fixture.getType() == FixtureType.COOKTOP) {
			return List.of(outline.grown(Length.ZERO, Length.ZERO, ABOVE_COOKTOP));
		}
		if (fixture.getType() == FixtureType.FIREPLACE) {
			return List.of(outline, SurveyedOutline.fireOpening(fixture).grown(less(FROM_FIRE, gap)));
		}
		return List.of(SurveyedOutline.covered(design, fixture));
	}

	private static Length less(Length distance, Length gap) {
		return distance.minus(gap).max(Length.ZERO);
	}
}
