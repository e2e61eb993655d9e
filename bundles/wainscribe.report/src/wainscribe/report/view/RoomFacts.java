// SPDX-License-Identifier: EPL-2.0
package wainscribe.report.view;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToIntFunction;
import java.util.function.UnaryOperator;

import wainscribe.layout.PlainStretch;
import wainscribe.layout.RoomLayout;
import wainscribe.layout.StripKind;
import wainscribe.model.Room;
import wainscribe.model.RoomUse;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;

/** What was measured of a room and what is proposed for it, as short facts. */
record RoomFacts(Wording wording, UnaryOperator<String> profileName, UnaryOperator<String> patternName) {

	List<Fact> measured(Room room) {
		List<Fact> facts = new ArrayList<>();
		if (room.getUse() != RoomUse.UNRECORDED) {
			facts.add(new Fact("Use", Wording.words(room.getUse())));
		}
		facts.add(new Fact("Walls", String.valueOf(room.getWalls().size())));
		Length round = room.getWalls().stream().map(Wall::getLength).filter(length -> length != null).reduce(Length.ZERO,
				Length::plus);
		facts.add(new Fact("Round the walls", wording.length(round)));
		facts.add(new Fact("Ceiling height", wording.length(room.getHeight())));
		facts.add(new Fact("Openings", count(room, wall -> wall.getOpenings().size())));
		facts.add(new Fact("Fixtures", count(room, wall -> wall.getFixtures().size())));
		facts.add(new Fact("Plates", count(room, wall -> wall.getBoxes().size())));
		return facts;
	}

	private static String count(Room room, ToIntFunction<Wall> things) {
		return String.valueOf(room.getWalls().stream().mapToInt(things).sum());
	}

	List<Fact> proposed(RoomLayout layout) {
		List<Fact> facts = new ArrayList<>();
		facts.add(new Fact("Pattern", patternName.apply(layout.pattern())));
		layout.rail().ifPresent(rail -> facts.add(
				new Fact("Rail", "top at " + wording.length(rail.top()) + ", underside at " + wording.length(rail.bottom()))));
		long frames = layout.frames().count();
		if (frames > 0) {
			facts.add(new Fact("Frames", String.valueOf(frames)));
			facts.add(new Fact("Gap", wording.length(layout.gap()) + (layout.gapY().equals(layout.gap()) ? " everywhere"
					: " beside frames, " + wording.length(layout.gapY()) + " above and below")));
			facts.add(new Fact("Frame widths", widths(layout)));
			facts.add(new Fact("Moulding", moulding(layout)));
		}
		long strips = layout.strips().count();
		if (strips > 0) {
			facts.add(new Fact("Strips", strips(layout)));
			facts.add(new Fact("Clear between", layout.gapY().signum() == 0 ? wording.length(layout.gap())
					: wording.length(layout.gap()) + " by " + wording.length(layout.gapY())));
			if (frames == 0) {
				facts.add(new Fact("Strip", moulding(layout)));
			}
		}
		facts.add(new Fact("Material", Wording.words(layout.material())));
		if (layout.proved() && frames + strips > 0) {
			facts.add(new Fact("Proof", "no better division exists under these wishes"));
		}
		return facts;
	}

	/** Counts strips by what they are: {@code 12 stiles, 11 rails}. */
	private static String strips(RoomLayout layout) {
		List<String> kinds = new ArrayList<>();
		for (StripKind kind : StripKind.values()) {
			long count = layout.strips().filter(strip -> strip.kind() == kind).count();
			if (count > 0) {
				kinds.add(count + " " + kind.word() + (count == 1 ? "" : "s"));
			}
		}
		return String.join(", ", kinds);
	}

	private String moulding(RoomLayout layout) {
		String size = wording.length(layout.profile().face()) + " face, " + wording.length(layout.profile().thickness())
				+ " thick";
		return layout.profile().id().isEmpty() ? size : profileName.apply(layout.profile().id()) + ", " + size;
	}

	/** Names each width once; more than a handful as a range. */
	private String widths(RoomLayout layout) {
		List<Length> widths = layout.frames().map(frame -> frame.width().roundedTo(wording.unit().tapeMark())).distinct()
				.sorted().toList();
		if (widths.size() > 4) {
			return wording.length(widths.getFirst()) + " to " + wording.length(widths.getLast());
		}
		return String.join(", ", widths.stream().map(wording::length).toList());
	}

	List<String> open(RoomLayout layout) {
		return layout.infeasible().stream().map(RoomFacts::sentence).toList();
	}

	private static String sentence(PlainStretch stretch) {
		String wall = stretch.wall() == null || stretch.wall().getName() == null ? "" : "Wall " + stretch.wall().getName() + ": ";
		String nearest = stretch.nearest() == null || stretch.nearest().isBlank() ? "" : " " + stretch.nearest();
		return wall + stretch.reason() + nearest;
	}
}
