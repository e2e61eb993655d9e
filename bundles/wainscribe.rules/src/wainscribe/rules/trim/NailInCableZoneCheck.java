// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.trim;

import java.util.Optional;

import wainscribe.model.Box;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.model.outline.Outline;
import wainscribe.model.outline.WallShape;
import wainscribe.rules.RuleCheck;
import wainscribe.rules.RuleContext;
import wainscribe.rules.Subject;
import wainscribe.rules.measure.SurveyedOutline;
import wainscribe.rules.measure.WallStrips;

/** Finds walls whose mouldings are fixed where cables may run: straight up, down or across from a switch or socket. */
public final class NailInCableZoneCheck implements RuleCheck {

	@Override
	public void check(RuleContext context) {
		for (Wall wall : context.walls()) {
			WallStrips strips = WallStrips.of(context.design(), wall);
			Optional<Box> crossed = wall.getBoxes().stream().filter(box -> isCrossed(wall, strips, box)).findFirst();
			crossed.ifPresent(box -> context.report(Subject.of(wall), Messages.NailInCableZoneCheck_Wall, wall.getName(),
					Subject.of(box).element()));
		}
	}

	private static boolean isCrossed(Wall wall, WallStrips strips, Box box) {
		Outline plate = SurveyedOutline.of(box);
		WallShape shape = WallShape.of(wall);
		Length top = shape.ceilingLeft().max(shape.ceilingRight()).max(plate.y1());
		Outline upAndDown = new Outline(plate.x0(), Length.ZERO.min(plate.y0()), plate.x1(), top);
		Outline across = new Outline(Length.ZERO.min(plate.x0()), plate.y0(), shape.length().max(plate.x1()), plate.y1());
		return strips.crossing(upAndDown).isPresent() || strips.crossing(across).isPresent();
	}
}
