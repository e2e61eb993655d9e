// SPDX-License-Identifier: EPL-2.0
package wainscribe.commands;

import org.eclipse.osgi.util.NLS;

import wainscribe.model.ExistingTrim;
import wainscribe.model.WainscribePackage.Literals;

/** Decides that a moulding which is on the wall now goes, or that it stays after all. */
public final class TakeDownCommand extends EditCommand {

	private final ExistingTrim trim;
	private final boolean goes;

	/**
	 * Creates a command.
	 *
	 * @param trim a moulding on a wall
	 * @param goes true: it is taken down; false: it stays
	 */
	public TakeDownCommand(ExistingTrim trim, boolean goes) {
		super(NLS.bind(goes ? Messages.TakeDownCommand_Goes : Messages.TakeDownCommand_Stays, ElementWords.of(trim)), trim);
		this.trim = trim;
		this.goes = goes;
	}

	@Override
	protected boolean isEffective() {
		return goes != Boolean.FALSE.equals(trim.getKeep());
	}

	/** That a moulding stays is what holds when nothing is said. */
	@Override
	protected void perform(ChangeLog changes) {
		changes.set(trim, Literals.EXISTING_TRIM__KEEP, goes ? Boolean.FALSE : null);
	}
}
