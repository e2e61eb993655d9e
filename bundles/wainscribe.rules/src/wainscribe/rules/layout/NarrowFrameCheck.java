// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.layout;

import wainscribe.layout.FrameOutline;
import wainscribe.layout.WallLayout;
import wainscribe.model.length.Length;
import wainscribe.rules.RuleCheck;
import wainscribe.rules.RuleContext;
import wainscribe.rules.Subject;

/** Finds frames too narrow to read as panels: under the least width, or with hardly any field between the mouldings. */
public final class NarrowFrameCheck implements RuleCheck {

	@Override
	public void check(RuleContext context) {
		for (WallLayout wall : context.layout().walls()) {
			wall.frames().forEach(frame -> check(context, wall, frame));
		}
	}

	private static void check(RuleContext context, WallLayout wall, FrameOutline frame) {
		Length least = context.length("width"); //$NON-NLS-1$
		Length face = context.layout().profile().face();
		Length field = frame.width().min(frame.height()).minus(face.times(2));
		if (frame.width().isLessThan(least)) {
			context.report(Subject.of(wall.wall(), frame), Messages.NarrowFrameCheck_Width, frame.id(), frame.width(), least);
		} else if (field.isLessThan(face.times(2))) {
			context.report(Subject.of(wall.wall(), frame), Messages.NarrowFrameCheck_Field, frame.id(), field, face.times(2));
		}
	}
}
