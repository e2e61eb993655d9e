// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.paint;

import wainscribe.model.FanOutlet;
import wainscribe.model.Room;
import wainscribe.rules.RuleCheck;
import wainscribe.rules.RuleContext;
import wainscribe.rules.Subject;

/** Finds exhaust fans that do not blow outdoors. */
public final class FanNotOutdoorsCheck implements RuleCheck {

	@Override
	public void check(RuleContext context) {
		Room room = context.room();
		if (room.getFanOutlet() == FanOutlet.ATTIC) {
			context.report(Subject.of(room), Messages.FanNotOutdoorsCheck_Attic);
		} else if (room.getFan() != null && room.getFanOutlet() == FanOutlet.NONE) {
			context.report(Subject.of(room), Messages.FanNotOutdoorsCheck_None);
		} else if (room.getFan() != null && room.getFanOutlet() == FanOutlet.UNRECORDED) {
			context.ask(Subject.of(room), Messages.FanNotOutdoorsCheck_Ask);
		}
	}
}
