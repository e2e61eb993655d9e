// SPDX-License-Identifier: EPL-2.0
package wainscribe.commands;

import java.util.Objects;

import org.eclipse.osgi.util.NLS;

import wainscribe.model.ReferenceLine;
import wainscribe.model.WainscribePackage.Literals;
import wainscribe.model.length.Length;

/** Lays an axis or a guide elsewhere. */
public final class MoveLineCommand extends EditCommand {

	private final ReferenceLine line;
	private final Length at;

	/**
	 * Creates a command.
	 *
	 * @param line a line on a wall or in a room
	 * @param at   its new place: from the left end of its wall, or above the finished floor; refused below zero
	 */
	public MoveLineCommand(ReferenceLine line, Length at) {
		super(NLS.bind(Messages.MoveElementCommand_Label, ElementWords.of(line)), line);
		this.line = line;
		this.at = Objects.requireNonNull(at);
	}

	@Override
	protected boolean isEffective() {
		return at.signum() >= 0 && !at.equals(line.getAt());
	}

	@Override
	protected void perform(ChangeLog changes) {
		changes.set(line, Literals.REFERENCE_LINE__AT, at);
	}
}
