// SPDX-License-Identifier: EPL-2.0
package wainscribe.commands;

import java.util.Objects;

import org.eclipse.osgi.util.NLS;

import wainscribe.model.Fixture;
import wainscribe.model.Placed;
import wainscribe.model.WainscribePackage;
import wainscribe.model.length.Length;

/** Moves something on its wall. The fire opening of a fireplace moves along. */
public final class MoveElementCommand extends EditCommand {

	private final Placed element;
	private final Length x;
	private final Length y;

	/**
	 * Creates a command.
	 *
	 * @param element something on a wall
	 * @param x       its new left edge, from the wall's left end
	 * @param y       its new lower edge, from the floor line
	 */
	public MoveElementCommand(Placed element, Length x, Length y) {
		super(NLS.bind(Messages.MoveElementCommand_Label, ElementWords.of(element)), element);
		this.element = element;
		this.x = Objects.requireNonNull(x);
		this.y = Objects.requireNonNull(y);
	}

	@Override
	protected boolean isEffective() {
		return !isAt(x, element.getX()) || !isAt(y, element.getY());
	}

	@Override
	protected void perform(ChangeLog changes) {
		if (element instanceof Fixture fixture && fixture.getOpeningX() != null && fixture.getX() != null) {
			changes.set(fixture, WainscribePackage.Literals.FIXTURE__OPENING_X,
					fixture.getOpeningX().plus(x.minus(fixture.getX())));
		}
		if (!isAt(x, element.getX())) {
			changes.set(element, WainscribePackage.Literals.PLACED__X, x);
		}
		if (!isAt(y, element.getY())) {
			changes.set(element, WainscribePackage.Literals.PLACED__Y, y);
		}
	}

	/** What was not measured counts from the corner and the floor, and stays unmeasured when it stays there. */
	private static boolean isAt(Length wanted, Length present) {
		return present == null ? wanted.signum() == 0 : wanted.equals(present);
	}
}
