// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.home;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.osgi.util.NLS;

import wainscribe.model.Element;
import wainscribe.model.Room;
import wainscribe.model.Wall;
import wainscribe.model.length.LengthFormat;
import wainscribe.profile.TrimProfile;
import wainscribe.rules.Finding;
import wainscribe.ui.Icon;
import wainscribe.ui.findings.FindingCounts;
import wainscribe.ui.session.HomeProfile;
import wainscribe.ui.session.HomeSession;
import wainscribe.ui.session.RoomSession;

/**
 * What one row of the tree says.
 *
 * @param icon     drawing at its left
 * @param heavy    whether the name is bold
 * @param name     first line
 * @param state    second line
 * @param findings counts at its right
 * @param inOrder  whether a tick stands there instead
 */
record HomeRow(Icon icon, boolean heavy, String name, String state, FindingCounts findings, boolean inOrder) {

	private static final String BETWEEN = " \u00b7 "; //$NON-NLS-1$

	/** Reads the row of a home or a room. */
	static HomeRow of(Object element) {
		return switch (element) {
			case HomeSession home -> home(home);
			case RoomSession room -> room(room);
			case HomeProfile profile -> profile(profile);
			case UnreadableHome home -> new HomeRow(Icon.HOME_UNREADABLE, true, home.project().getName(),
				Messages.HomeRow_Unreadable, FindingCounts.of(List.of()), false);
			default -> throw new IllegalArgumentException(String.valueOf(element));
		};
	}

	/** Says the whole row in one line, for screen readers and the pointer. */
	String spoken() {
		return name + BETWEEN + state + (findings.counts().isEmpty() ? "" : BETWEEN + findings.words()); //$NON-NLS-1$
	}

	private static HomeRow home(HomeSession home) {
		int rooms = home.rooms().size();
		String state = rooms == 0 ? Messages.HomeRow_NoRooms
			: NLS.bind(rooms == 1 ? Messages.HomeRow_Room : Messages.HomeRow_Rooms, String.valueOf(rooms));
		List<Finding> all = home.rooms().stream().flatMap(room -> room.findings().stream()).toList();
		boolean inOrder = rooms > 0 && all.isEmpty() && home.rooms().stream().allMatch(RoomSession::isChecked);
		return new HomeRow(Icon.HOME, true, nameOr(home.home(), home.project().getName()), state, FindingCounts.of(all), inOrder);
	}

	private static HomeRow room(RoomSession session) {
		List<String> state = new ArrayList<>();
		state.add(measured(session.room()));
		if (session.isChecked()) {
			state.add(laidOut(session.frameCount()));
		}
		String name = nameOr(session.room(), session.file().getName());
		return new HomeRow(Icon.ROOM, false, session.isDirty() ? NLS.bind(Messages.HomeRow_Unsaved, name) : name,
			String.join(BETWEEN, state), FindingCounts.of(session.findings()), session.isChecked() && session.findings().isEmpty());
	}

	private static HomeRow profile(HomeProfile profile) {
		TrimProfile read = profile.read().orElse(null);
		String name = read == null ? profile.file().getName() : read.name();
		String state = profile.fault().isEmpty() && read != null
			? NLS.bind(Messages.HomeRow_Profile, LengthFormat.asShown(read.face(), profile.home().units()),
				LengthFormat.asShown(read.thickness(), profile.home().units()))
			: Messages.HomeRow_ProfileNotSound;
		return new HomeRow(Icon.PROFILE, false, name, state, FindingCounts.of(List.of()), false);
	}

	private static String measured(Room room) {
		int walls = room.getWalls().size();
		if (walls == 0) {
			return Messages.HomeRow_NotMeasured;
		}
		boolean whole = room.getHeight() != null || room.getWalls().stream().map(Wall::getHeight).allMatch(height -> height != null);
		String count = NLS.bind(walls == 1 ? Messages.HomeRow_Wall : Messages.HomeRow_Walls, String.valueOf(walls));
		return whole ? count : NLS.bind(Messages.HomeRow_HeightMissing, count);
	}

	private static String laidOut(int frames) {
		return frames == 0 ? Messages.HomeRow_NoFrames
			: NLS.bind(frames == 1 ? Messages.HomeRow_Frame : Messages.HomeRow_Frames, String.valueOf(frames));
	}

	private static String nameOr(Element element, String otherwise) {
		return element.getName() == null || element.getName().isBlank() ? otherwise : element.getName();
	}
}
