// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Consumer;
import java.util.function.Supplier;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.ecore.EObject;

import wainscribe.layout.RoomDesign;
import wainscribe.layout.RoomDesigner;
import wainscribe.model.Home;
import wainscribe.model.Room;

/**
 * Finds out what a step would lead to without making it one: does it, lays the room out, lets somebody look, takes it back.
 * Nobody who listens to the model hears of it, and the history is not touched.
 */
final class Trial {

	private final Supplier<RoomDesigner> designer;

	Trial(Supplier<RoomDesigner> designer) {
		this.designer = Objects.requireNonNull(designer);
	}

	/**
	 * Tries a step.
	 *
	 * @param home home of the room
	 * @param room the room that the step changes
	 * @param step a command that can be executed and was not yet
	 * @param look called while the room is as after the step
	 */
	void run(Home home, Room room, Command step, Consumer<RoomDesign> look) {
		List<EObject> talking = silence(room);
		try {
			step.execute();
			try {
				look.accept(designer.get().design(home, room));
			} finally {
				step.undo();
			}
		} finally {
			talking.forEach(object -> object.eSetDeliver(true));
		}
	}

	private static List<EObject> silence(Room room) {
		List<EObject> talking = new ArrayList<>();
		talking.add(room);
		room.eAllContents().forEachRemaining(talking::add);
		talking.removeIf(object -> !object.eDeliver());
		talking.forEach(object -> object.eSetDeliver(false));
		return talking;
	}
}
