// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.actions;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.command.CompoundCommand;
import org.eclipse.gef.EditPart;
import org.eclipse.gef.GraphicalViewer;

import wainscribe.commands.TakeDownCommand;
import wainscribe.model.ExistingTrim;
import wainscribe.ui.drafting.history.ModelCommand;

/** Takes the existing trim that is selected down, or leaves it up after all; as one step. */
final class TakeDown {

	private final GraphicalViewer viewer;

	TakeDown(GraphicalViewer viewer) {
		this.viewer = Objects.requireNonNull(viewer);
	}

	/** Returns the step: what is up goes; where everything selected goes already, it stays. */
	Optional<Command> step() {
		List<ExistingTrim> trims = ((List<?>) viewer.getSelectedEditParts()).stream().filter(EditPart.class::isInstance)
				.map(part -> ((EditPart) part).getModel()).filter(ExistingTrim.class::isInstance).map(ExistingTrim.class::cast)
				.toList();
		List<Command> down = steps(trims, true);
		List<Command> steps = down.isEmpty() ? steps(trims, false) : down;
		return steps.isEmpty() ? Optional.empty() : Optional.of(new CompoundCommand(steps.getFirst().getLabel(), "", steps)); //$NON-NLS-1$
	}

	private static List<Command> steps(List<ExistingTrim> trims, boolean goes) {
		return trims.stream().<Command>map(trim -> new TakeDownCommand(trim, goes))
				.filter(Command::canExecute).toList();
	}

	void run() {
		step().ifPresent(step -> viewer.getEditDomain().getCommandStack().execute(new ModelCommand(step)));
	}
}
