// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.services;

import wainscribe.model.Box;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.rules.RuleCheck;
import wainscribe.rules.RuleContext;
import wainscribe.rules.Subject;
import wainscribe.rules.measure.AddedBoard;

/** Finds electrical boxes that a board added over the wall leaves set back in something that burns. */
public final class BoxBehindBoardCheck implements RuleCheck {

	@Override
	public void check(RuleContext context) {
		for (Wall wall : context.walls()) {
			Length board = AddedBoard.on(wall, context.design().brief());
			if (board.signum() > 0) {
				wall.getBoxes().forEach(box -> report(context, box, board));
			}
		}
	}

	private static void report(RuleContext context, Box box, Length board) {
		Subject subject = Subject.of(box);
		context.report(subject, Messages.BoxBehindBoardCheck_SetBack, subject.element(), board);
	}
}
