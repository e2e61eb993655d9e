// SPDX-License-Identifier: EPL-2.0
package wainscribe.commands;

import java.util.List;

import wainscribe.model.CutBar;
import wainscribe.model.Home;
import wainscribe.model.StoredOffcut;
import wainscribe.model.WainscribePackage.Literals;

/** Keeps a cutting plan in a home: its bars are decided, the offcuts it cuts from are used up, its leftovers become offcuts. */
public final class AcceptCuttingPlanCommand extends EditCommand {

	private final Home home;
	private final List<StoredOffcut> used;
	private final List<StoredOffcut> left;
	private final List<CutBar> bars;

	/**
	 * Creates a command.
	 *
	 * @param home the home
	 * @param used offcuts of the home that the plan cuts from
	 * @param left what it leaves, in no home yet
	 * @param bars its bars, in no home yet
	 */
	public AcceptCuttingPlanCommand(Home home, List<StoredOffcut> used, List<StoredOffcut> left, List<CutBar> bars) {
		super(Messages.AcceptCuttingPlanCommand_Label, home);
		this.home = home;
		this.used = List.copyOf(used);
		this.left = List.copyOf(left);
		this.bars = List.copyOf(bars);
	}

	@Override
	protected boolean isEffective() {
		return !bars.isEmpty() && home.getOffcuts().containsAll(used);
	}

	@Override
	protected void perform(ChangeLog changes) {
		used.forEach(offcut -> changes.remove(home, Literals.HOME__OFFCUTS, offcut));
		left.forEach(offcut -> changes.add(home, Literals.HOME__OFFCUTS, offcut));
		bars.forEach(bar -> changes.add(home, Literals.HOME__CUT_BARS, bar));
	}
}
