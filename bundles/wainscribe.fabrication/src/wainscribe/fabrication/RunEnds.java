// SPDX-License-Identifier: EPL-2.0
package wainscribe.fabrication;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

import wainscribe.fabrication.CornerJoints.Cut;
import wainscribe.fabrication.CornerJoints.Meeting;
import wainscribe.fabrication.Stretch.Halt;
import wainscribe.fabrication.Stretch.Stop;
import wainscribe.layout.RoomDesign;
import wainscribe.model.CasingJoint;
import wainscribe.model.Room;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;

/** Finds the stretches of a run on every wall, and how each of them ends. */
final class RunEnds {

	private final Room room;
	private final RunSpec spec;
	private final RunBlocks blocks;
	private final JointPractice practice;
	private final RoomCorners corners;
	private final CornerJoints joints;
	private final RoomDesign design;
	private final List<List<Stretch>> stretches = new ArrayList<>();

	/**
	 * The end of a stretch.
	 *
	 * @param cut      how it is cut
	 * @param shorter  by how much a block shortens it
	 */
	record End(Cut cut, Length shorter) {

		static End of(Cut cut) {
			return new End(cut, Length.ZERO);
		}
	}

	RunEnds(RoomDesign design, RunSpec spec, JointPractice practice, RunBlocks blocks) {
		this.design = design;
		room = design.room();
		this.spec = spec;
		this.practice = practice;
		this.blocks = blocks;
		corners = new RoomCorners(room);
		joints = new CornerJoints(practice.inside(), spec.coped(), spec.kind() != PieceKind.RAIL);
		for (Wall wall : room.getWalls()) {
			stretches.add(Stretches.of(wall, spec.obstructions(design, wall)));
		}
	}

	/** Returns the stretches of a wall from left to right. */
	List<Stretch> on(int wall) {
		return stretches.get(wall);
	}

	End left(int wall, Stretch stretch) {
		OptionalInt before = corners.previous(wall);
		if (stretch.left().stop() != Stop.CORNER || before.isEmpty()) {
			return halt(wall, stretch.left());
		}
		int other = before.getAsInt();
		List<Stretch> there = stretches.get(other);
		boolean meets = !there.isEmpty() && there.getLast().right().stop() == Stop.CORNER;
		boolean through = meets && stretch.length().isMoreThan(there.getLast().length());
		return corner(wall, other, corners.angleAfter(other), meets ? Meeting.NEW : kept(other, false), through);
	}

	End right(int wall, Stretch stretch) {
		OptionalInt after = corners.next(wall);
		if (stretch.right().stop() != Stop.CORNER || after.isEmpty()) {
			return halt(wall, stretch.right());
		}
		int other = after.getAsInt();
		List<Stretch> there = stretches.get(other);
		boolean meets = !there.isEmpty() && there.getFirst().left().stop() == Stop.CORNER;
		boolean through = meets && !stretch.length().isLessThan(there.getFirst().length());
		return corner(wall, other, corners.angleAfter(wall), meets ? Meeting.NEW : kept(other, true), through);
	}

	private Meeting kept(int other, boolean atItsLeft) {
		Wall wall = room.getWalls().get(other);
		return spec.obstructions(design, wall).keptAtEnd(wall, atItsLeft) ? Meeting.KEPT : Meeting.NOTHING;
	}

	private End corner(int wall, int other, double angle, Meeting meeting, boolean through) {
		double pitch = pitch(wall);
		if (CornerJoints.isStraight(angle) && meeting == Meeting.NEW && pitch != pitch(other)) {
			return End.of(Cut.rake(pitch, pitch(other)));
		}
		Cut cut = joints.at(angle, meeting, through);
		Length shorter = cut.joint() == Joint.BUTT_TO_BLOCK ? blocks.cornerSide() : Length.ZERO;
		return new End(plumb(wall, cut), shorter);
	}

	private End halt(int wall, Halt halt) {
		boolean thin = halt.isThinnerThan(spec.section().thickness());
		if (thin && spec.kind() == PieceKind.BASE && practice.baseAtCasing() == CasingJoint.PLINTH) {
			return new End(plumb(wall, Cut.square(Joint.BUTT_TO_PLINTH)), blocks.plinthBeyondCasing());
		}
		return End.of(plumb(wall, switch (halt.stop()) {
			case CASING -> thin ? Cut.returned() : Cut.square(Joint.BUTT_TO_CASING);
			case FIXTURE -> Cut.square(Joint.BUTT_TO_FIXTURE);
			case TRIM -> Cut.square(Joint.BUTT_TO_TRIM);
			case CORNER, DISTANCE -> Cut.returned();
		}));
	}

	/** On a slope the ends are plumb; a return there is shaped on site, so the end stays square. */
	private Cut plumb(int wall, Cut cut) {
		double pitch = pitch(wall);
		if (pitch == 0) {
			return cut;
		}
		return (cut.joint() == Joint.RETURN ? Cut.square(Joint.SQUARE_END) : cut).plumb(pitch);
	}

	private double pitch(int wall) {
		return spec.pitch(room.getWalls().get(wall));
	}
}
