// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.heat;

import java.util.List;

import wainscribe.model.RoomUse;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.rules.RuleCheck;
import wainscribe.rules.RuleContext;
import wainscribe.rules.Subject;
import wainscribe.rules.measure.AddedBoard;
import wainscribe.rules.measure.PlanShape;
import wainscribe.rules.measure.RoomPlan;

/** Finds halls of four walls that are too narrow once boards are on them. */
public final class NarrowHallCheck implements RuleCheck {

	private static final int WALLS = 4;

	@Override
	public void check(RuleContext context) {
		List<Wall> walls = context.walls();
		if (context.room().getUse() != RoomUse.HALL || walls.size() != WALLS) {
			return;
		}
		List<PlanShape> lines = new RoomPlan(context.room()).walls();
		Length across = width(context, lines, 0).min(width(context, lines, 1));
		Length least = context.length("width"); //$NON-NLS-1$
		if (across.signum() > 0 && across.isLessThan(least)) {
			context.report(Subject.of(context.room()), Messages.NarrowHallCheck_Room, across, least);
		}
	}

	private static Length width(RuleContext context, List<PlanShape> lines, int wall) {
		Wall near = context.walls().get(wall);
		Wall far = context.walls().get(wall + WALLS / 2);
		Length boards = AddedBoard.on(near, context.design().brief()).plus(AddedBoard.on(far, context.design().brief()));
		return lines.get(wall).distanceTo(lines.get(wall + WALLS / 2)).minus(boards);
	}
}
