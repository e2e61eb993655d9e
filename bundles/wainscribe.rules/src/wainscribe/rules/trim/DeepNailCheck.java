// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.trim;

import java.util.Comparator;
import java.util.List;

import wainscribe.model.length.Length;
import wainscribe.rules.RuleCheck;
import wainscribe.rules.RuleContext;
import wainscribe.rules.Subject;

/**
 * Finds nails that reach where unprotected cables and pipes may begin. One finding for the room if it is so on all walls with
 * moulding, else one a wall.
 */
public final class DeepNailCheck implements RuleCheck {

	@Override
	public void check(RuleContext context) {
		Length most = context.length("bite"); //$NON-NLS-1$
		List<NailBite> bites = NailBite.deepest(context);
		List<NailBite> deep = bites.stream().filter(bite -> bite.bite().isMoreThan(most)).toList();
		List<NailBite> known = deep.stream().filter(NailBite::boardKnown).toList();
		if (known.size() == bites.size() && !known.isEmpty()) {
			report(context, Subject.of(context.room()), known.stream().max(Comparator.comparing(NailBite::bite)).orElseThrow());
		} else {
			known.forEach(bite -> report(context, Subject.of(bite.wall()), bite));
		}
		if (deep.size() > known.size()) {
			ask(context, deep.stream().filter(bite -> !bite.boardKnown()).findFirst().orElseThrow());
		}
	}

	private static void report(RuleContext context, Subject subject, NailBite bite) {
		context.report(subject, Messages.DeepNailCheck_Deep, context.design().brief().nail(), bite.moulding(), bite.board(),
				bite.bite(), context.length("bite")); //$NON-NLS-1$
	}

	private static void ask(RuleContext context, NailBite bite) {
		context.ask(Subject.of(context.room()), Messages.DeepNailCheck_Ask, context.design().brief().nail(), bite.moulding(),
				context.length("bite"), bite.wall().getName()); //$NON-NLS-1$
	}
}
