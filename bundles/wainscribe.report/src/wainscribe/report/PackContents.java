// SPDX-License-Identifier: EPL-2.0
package wainscribe.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

import org.eclipse.core.runtime.OperationCanceledException;

import wainscribe.layout.RoomDesign;
import wainscribe.model.Home;
import wainscribe.model.Room;
import wainscribe.rules.RuleSettings;
import wainscribe.takeoff.CutStock;

/** Works out what a pack says: lays rooms out, checks them, cuts and counts. */
public final class PackContents {

	private final DesignServices services;

	/** Creates the service. */
	public PackContents(DesignServices services) {
		this.services = Objects.requireNonNull(services);
	}

	/**
	 * Works out the content of a pack.
	 *
	 * @param home     the home
	 * @param rooms    some or all of its rooms, in the order of the pack
	 * @param progress hears one step a room
	 * @return the content
	 * @throws OperationCanceledException if the user stops it
	 * @throws IllegalArgumentException   if a room's brief names an unknown pattern
	 */
	public PackContent of(Home home, List<Room> rooms, PackProgress progress) {
		List<RoomContent> contents = new ArrayList<>();
		List<RoomDesign> designs = new ArrayList<>();
		for (Room room : rooms) {
			if (progress.isCancelled()) {
				throw new OperationCanceledException();
			}
			progress.step(room.getName() == null ? "" : room.getName(), contents.size(), rooms.size()); //$NON-NLS-1$
			RoomDesign design = services.designer().design(home, room);
			designs.add(design);
			contents.add(new RoomContent(design,
					services.rules().check(design, RuleSettings.DEFAULT, progress::isCancelled), services.cutLists().of(design)));
		}
		CutStock stock = services.takeoffs().stock(home, designs);
		return new PackContent(home, contents, services.takeoffs().of(home, designs, stock), stock.plan());
	}
}
