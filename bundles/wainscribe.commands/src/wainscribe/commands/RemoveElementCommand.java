// SPDX-License-Identifier: EPL-2.0
package wainscribe.commands;

import java.util.Collection;
import java.util.List;

import org.eclipse.osgi.util.NLS;

import wainscribe.model.Placed;
import wainscribe.model.Wall;

/** Takes a thing off its wall. Undo puts it back where it stood in the survey. */
public final class RemoveElementCommand extends EditCommand {

	private final Placed element;

	/**
	 * Creates a command.
	 *
	 * @param element something on a wall
	 */
	public RemoveElementCommand(Placed element) {
		super(NLS.bind(Messages.RemoveElementCommand_Label, ElementWords.of(element)), element);
		this.element = element;
	}

	@Override
	protected boolean isEffective() {
		return element.eContainer() instanceof Wall;
	}

	@Override
	protected void perform(ChangeLog changes) {
		changes.remove(element.eContainer(), element.eContainmentFeature(), element);
	}

	/** Returns nothing while the element is away, else the element. */
	@Override
	public Collection<?> getResult() {
		return element.eContainer() == null ? List.of() : List.of(element);
	}
}
