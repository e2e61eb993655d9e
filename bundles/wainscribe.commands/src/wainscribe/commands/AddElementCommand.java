// SPDX-License-Identifier: EPL-2.0
package wainscribe.commands;

import java.util.Collection;
import java.util.List;
import java.util.Objects;

import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.osgi.util.NLS;

import wainscribe.model.Placed;
import wainscribe.model.Wall;

/** Puts a new thing on a wall: an outlet, a fixture, a door or window, existing trim, a service. */
public final class AddElementCommand extends EditCommand {

	private final Wall wall;
	private final Placed element;
	private final EReference list;

	/**
	 * Creates a command.
	 *
	 * @param wall    the wall
	 * @param element the thing, complete, and on no wall yet; gets an id if it has none
	 * @throws IllegalArgumentException for a thing that no wall keeps
	 */
	public AddElementCommand(Wall wall, Placed element) {
		super(NLS.bind(Messages.AddElementCommand_Label, ElementWords.of(element)), wall);
		this.wall = wall;
		this.element = Objects.requireNonNull(element);
		this.list = WallPlace.of(element);
	}

	@Override
	protected boolean isEffective() {
		return element.eContainer() == null && element.getX() != null && element.getY() != null;
	}

	@Override
	protected void perform(ChangeLog changes) {
		if (element.getId() == null) {
			element.setId(EcoreUtil.generateUUID());
		}
		changes.add(wall, list, element);
	}

	@Override
	public Collection<?> getResult() {
		return List.of(element);
	}
}
