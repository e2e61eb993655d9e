// SPDX-License-Identifier: EPL-2.0
package wainscribe.report.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

import wainscribe.layout.WallLayout;
import wainscribe.layout.setout.SpacerBlock;
import wainscribe.layout.setout.StoryStick;
import wainscribe.layout.setout.StoryStick.StickMark;
import wainscribe.model.length.LengthUnit;
import wainscribe.report.PackContent;
import wainscribe.report.RoomContent;
import wainscribe.report.view.StickView.MarkView;

/** Makes the views of story sticks and spacer blocks. */
public final class StickViews {

	private final Wording wording;

	/**
	 * Creates a maker.
	 *
	 * @param unit unit of the tape
	 */
	public StickViews(LengthUnit unit) {
		wording = new Wording(unit);
	}

	/**
	 * Returns the sticks of all walls that have marks: one along each, and one upwards; walls of a room with the same heights
	 * share one.
	 */
	public List<StickView> of(PackContent content) {
		List<StickView> sticks = new ArrayList<>();
		for (RoomContent room : content.rooms()) {
			List<StoryStick> upright = new ArrayList<>();
			for (WallLayout wall : room.design().layout().walls()) {
				StoryStick along = StoryStick.along(wall, wording.unit());
				if (along.marks().isEmpty()) {
					continue;
				}
				sticks.add(view(room.name(), "wall " + along.wall() + ", along the wall", along));
				StoryStick up = StoryStick.up(wall, room.design().layout().rail().orElse(null), wording.unit());
				if (upright.stream().noneMatch(one -> one.marks().equals(up.marks()))) {
					upright.add(up);
				}
			}
			for (StoryStick up : upright) {
				sticks.add(view(room.name(), upright.size() == 1 ? "heights" : "heights as on wall " + up.wall(), up));
			}
		}
		return sticks;
	}

	private StickView view(String room, String what, StoryStick stick) {
		return new StickView(room.isEmpty() ? what : room + ", " + what, stick.upwards(), stick.length().approximateMillimetres(),
				stick.marks().stream().map(this::mark).toList());
	}

	private MarkView mark(StickMark mark) {
		return new MarkView(mark.mark().onTape().approximateMillimetres(),
				wording.mark(mark.mark().onTape()) + "  " + String.join(", ", mark.names()));
	}

	/** Returns what spacer blocks to cut for a room, one sentence each. */
	List<String> spacers(RoomContent room) {
		Objects.requireNonNull(room);
		List<SpacerBlock> blocks = SpacerBlock.of(room.design().layout(), wording.unit());
		long walls = room.design().layout().walls().size();
		return blocks.stream().map(block -> {
			String what = switch (block.use()) {
				case GAP -> "Gap block between frames";
				case VERTICAL_GAP -> "Gap block above and below frames";
				case RAIL_HEIGHT -> "Stick from the floor to the underside of the rail";
			};
			String where = block.walls().size() == walls ? "all walls"
					: (block.walls().size() == 1 ? "wall " : "walls ") + String.join(", ", block.walls());
			return what + ": " + wording.mark(block.size()) + ", " + where;
		}).toList();
	}
}
