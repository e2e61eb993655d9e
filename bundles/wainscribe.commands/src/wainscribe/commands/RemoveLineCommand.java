// SPDX-License-Identifier: EPL-2.0
package wainscribe.commands;

import java.util.Collection;
import java.util.List;
import java.util.Objects;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.osgi.util.NLS;

import wainscribe.model.ReferenceLine;

/** Takes an axis or a guide away. */
public final class RemoveLineCommand extends EditCommand {

	private final ReferenceLine line;
	private final EObject owner;

	/** Creates a command for a line on a wall or in a room. */
	public RemoveLineCommand(ReferenceLine line) {
		super(NLS.bind(Messages.RemoveElementCommand_Label, ElementWords.of(line)), line);
		this.line = line;
		this.owner = Objects.requireNonNullElse(line.eContainer(), line);
	}

	@Override
	protected boolean isEffective() {
		return line.eContainer() != null;
	}

	@Override
	protected void perform(ChangeLog changes) {
		changes.remove(line.eContainer(), line.eContainmentFeature(), line);
	}

	/** While the line is away, what had it is affected. */
	@Override
	public Collection<?> getAffectedObjects() {
		return List.of(owner);
	}

	/** Returns nothing while the line is away, else the line. */
	@Override
	public Collection<?> getResult() {
		return line.eContainer() == null ? List.of() : List.of(line);
	}
}
