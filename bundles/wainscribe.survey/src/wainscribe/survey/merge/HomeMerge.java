// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey.merge;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

import wainscribe.model.Home;
import wainscribe.model.Room;
import wainscribe.model.length.LengthUnit;
import wainscribe.survey.SurveyChange;
import wainscribe.survey.SurveyChange.Kind;
import wainscribe.survey.draft.ElementIds;

/** Brings a surveyed home and its rooms into those that are there. */
public final class HomeMerge {

	private static final Place WHOLE_HOME = new Place("", ""); //$NON-NLS-1$ //$NON-NLS-2$

	private final Merge merge = new Merge();
	private final List<Room> rooms;
	private final List<Room> touched = new ArrayList<>();

	/**
	 * Creates a merge.
	 *
	 * @param rooms the rooms that are there
	 */
	public HomeMerge(List<Room> rooms) {
		this.rooms = new ArrayList<>(rooms);
	}

	/** Returns all rooms, new ones last. */
	public List<Room> rooms() {
		return rooms;
	}

	/** Returns the rooms the survey had. */
	public List<Room> touched() {
		return touched;
	}

	/** Returns what changed. */
	public List<SurveyChange> changes() {
		return merge.changes();
	}

	/**
	 * Takes what the survey says about the home; what it leaves open stays.
	 *
	 * @param units unit of the survey, null if it named none
	 */
	public void takeHome(Home home, Home found, LengthUnit units) {
		Set<String> used = RoomMerge.idsOf(home);
		boolean isChanged = merge.takeGiven(home, found);
		if (units != null && units != home.getUnits()) {
			home.setUnits(units);
			isChanged = true;
		}
		if (isChanged) {
			merge.changed(Kind.CHANGED, "", ""); //$NON-NLS-1$ //$NON-NLS-2$
		}
		RoomMerge.mergePaints(merge, home.getPaints(), found.getPaints(), WHOLE_HOME);
		home.setBrief(RoomMerge.mergedBrief(merge, home.getBrief(), found.getBrief(), WHOLE_HOME));
		ElementIds.assign(home, used);
	}

	/** Takes a surveyed room in: into the room of its name, or as a new one. */
	public void takeRoom(Room found) {
		for (Room room : rooms) {
			if (found.getName().equals(room.getName())) {
				new RoomMerge(merge, room, found).run();
				touched.add(room);
				return;
			}
		}
		rooms.add(found);
		touched.add(found);
		merge.changed(Kind.ADDED, found.getName(), ""); //$NON-NLS-1$
	}
}
