// SPDX-License-Identifier: EPL-2.0
package wainscribe.commands;

import java.util.Collection;
import java.util.List;
import java.util.Objects;

import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.osgi.util.NLS;

import wainscribe.model.Axis;
import wainscribe.model.Element;
import wainscribe.model.Guide;
import wainscribe.model.ReferenceLine;
import wainscribe.model.Room;
import wainscribe.model.Wall;
import wainscribe.model.WainscribePackage.Literals;

/** Lays an axis or a plumb guide on a wall, or a level guide along all walls of a room. */
public final class AddLineCommand extends EditCommand {

	private final Element owner;
	private final ReferenceLine line;
	private final EReference list;

	private AddLineCommand(Element owner, ReferenceLine line, EReference list) {
		super(NLS.bind(Messages.AddElementCommand_Label, ElementWords.of(line)), owner);
		this.owner = owner;
		this.line = Objects.requireNonNull(line);
		this.list = list;
	}

	/** Marks an axis on a wall; the axis knows where, and is on no wall yet. */
	public static AddLineCommand axis(Wall wall, Axis axis) {
		return new AddLineCommand(wall, axis, Literals.WALL__AXES);
	}

	/** Lays a plumb guide on a wall; the guide knows where, and is on no wall yet. */
	public static AddLineCommand plumb(Wall wall, Guide guide) {
		return new AddLineCommand(wall, guide, Literals.WALL__GUIDES);
	}

	/** Lays a level guide along all walls; the guide knows how high, and is in no room yet. */
	public static AddLineCommand level(Room room, Guide guide) {
		return new AddLineCommand(room, guide, Literals.ROOM__GUIDES);
	}

	@Override
	protected boolean isEffective() {
		return line.eContainer() == null && line.getAt() != null;
	}

	@Override
	protected void perform(ChangeLog changes) {
		if (line.getId() == null) {
			line.setId(EcoreUtil.generateUUID());
		}
		changes.add(owner, list, line);
	}

	@Override
	public Collection<?> getResult() {
		return List.of(line);
	}
}
