// SPDX-License-Identifier: EPL-2.0
package wainscribe.fabrication;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.osgi.util.NLS;

import wainscribe.fabrication.CornerJoints.Cut;
import wainscribe.fabrication.RunEnds.End;
import wainscribe.fabrication.ScarfPlan.Joints;
import wainscribe.layout.RoomDesign;
import wainscribe.model.Room;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.model.length.LengthFormat;

/** Cuts one run of moulding - rail, base or crown - that goes round a room. */
final class RunPieces {

	/** A scarf is cut at 45 degrees (`scarf-on-stud`: 30 or 45, home-building magazine and moulding answers). */
	private static final double SCARF = 45;

	private final Room room;
	private final RunSpec spec;
	private final PieceNotes notes;
	private final Saw saw;
	private final RunEnds ends;
	private final RunBlocks blocks;
	private final WallStuds studs;

	RunPieces(RoomDesign design, RunSpec spec, PieceNotes notes, JointPractice practice, WallStuds studs) {
		room = design.room();
		this.spec = spec;
		this.notes = notes;
		this.studs = studs;
		saw = new Saw(practice.sawStep());
		blocks = new RunBlocks(spec, notes.unit());
		ends = new RunEnds(design, spec, practice, blocks);
	}

	/** A piece before it has its name. */
	private record Segment(Length x0, Length x1, Cut left, Cut right, List<String> notes) {
	}

	/** Returns the pieces of one wall from left to right, each with its returns behind it. */
	List<Piece> on(int index) {
		Wall wall = room.getWalls().get(index);
		List<Segment> segments = new ArrayList<>();
		for (Stretch stretch : ends.on(index)) {
			segments.addAll(segments(index, wall, stretch));
		}
		List<Piece> pieces = new ArrayList<>();
		for (int i = 0; i < segments.size(); i++) {
			String label = label(index) + (segments.size() > 1 ? "-" + (i + 1) : ""); //$NON-NLS-1$ //$NON-NLS-2$
			addPieces(index, wall, segments.get(i), label, pieces);
		}
		return pieces;
	}

	/** Returns the blocks at the ends of one wall's run and in the corner at its right end. */
	List<Block> blocksOn(int index) {
		List<Block> found = new ArrayList<>();
		for (Stretch stretch : ends.on(index)) {
			if (ends.left(index, stretch).cut().joint() == Joint.BUTT_TO_PLINTH) {
				found.add(blocks.plinth(label(index) + "-plinth-" + (found.size() + 1), name(index), stretch.left(), at(stretch.x0()))); //$NON-NLS-1$
			}
			Joint right = ends.right(index, stretch).cut().joint();
			if (right == Joint.BUTT_TO_PLINTH) {
				found.add(blocks.plinth(label(index) + "-plinth-" + (found.size() + 1), name(index), stretch.right(), at(stretch.x1()))); //$NON-NLS-1$
			} else if (right == Joint.BUTT_TO_BLOCK) {
				found.add(blocks.corner(name(index), name((index + 1) % room.getWalls().size())));
			}
		}
		return found;
	}

	private List<Segment> segments(int index, Wall wall, Stretch stretch) {
		End left = ends.left(index, stretch);
		End right = ends.right(index, stretch);
		Length x0 = stretch.x0().plus(left.shorter());
		Length x1 = stretch.x1().minus(right.shorter());
		if (!x1.isMoreThan(x0)) {
			return List.of();
		}
		Joints joints = studs.plan(wall, notes.longestStock().orElse(null)).between(x0, x1, (from, scarfLeft, to, scarfRight) -> cut(wall,
				segment(wall, from, scarfLeft ? null : left.cut(), to, scarfRight ? null : right.cut(), List.of())).longPoint());
		studs.joined(wall, joints.joints());
		List<Segment> segments = new ArrayList<>();
		Length from = x0;
		for (Length joint : joints.joints()) {
			segments.add(segment(wall, from, segments.isEmpty() ? left.cut() : null, joint, null, notes.ofScarf(wall, joint, joints.onStuds())));
			from = joint;
		}
		segments.add(segment(wall, from, segments.isEmpty() ? left.cut() : null, x1, right.cut(), List.of()));
		return segments;
	}

	/** Makes a segment; an end without a cut is a scarf: the left piece lies under, the right one laps over it. */
	private Segment segment(Wall wall, Length x0, Cut left, Length x1, Cut right, List<String> texts) {
		double pitch = spec.pitch(wall);
		Cut over = new Cut(Joint.SCARF, 180 - SCARF).plumb(pitch);
		Cut under = new Cut(Joint.SCARF, SCARF).plumb(pitch);
		return new Segment(x0, x1, left == null ? over : left, right == null ? under : right, texts);
	}

	/**
	 * Where a scarf is centred on its joint the back of the lower piece reaches half the thickness beyond it, and the back of
	 * the upper one begins there; a returned end has its face at the end of the run and its back a thickness short of it.
	 */
	private RunCut cut(Wall wall, Segment segment) {
		Length thickness = spec.section().thickness();
		Length half = thickness.dividedBy(2);
		Length run = segment.x1().minus(segment.x0());
		if (segment.left().joint() == Joint.SCARF) {
			run = run.minus(half);
		}
		if (segment.right().joint() == Joint.SCARF) {
			run = run.plus(half);
		}
		Cut left = segment.left();
		Cut right = segment.right();
		if (left.joint() == Joint.RETURN) {
			run = run.minus(thickness);
		}
		if (right.joint() == Joint.RETURN) {
			run = run.minus(thickness);
		}
		Length rise = spec.rise(wall, segment.x0(), segment.x1());
		return new RunCut(spec.section(), spec.isCrown(), run.max(Length.ZERO), rise, left, right);
	}

	private void addPieces(int index, Wall wall, Segment segment, String label, List<Piece> pieces) {
		RunCut cut = cut(wall, segment);
		List<String> texts = new ArrayList<>(spec.notes());
		if (cut.isSloped()) {
			texts.add(NLS.bind(Messages.RunPieces_Sloped, Mitre.setting(90 - Math.abs(cut.pitch())).toPlainString()));
		}
		texts.addAll(segment.notes());
		texts.addAll(notes.of(spec.kind(), cut.longPoint(), cut.start(saw), cut.end(saw)));
		pieces.add(piece(index, label, cut, segment.x0(), segment.x1(), texts));
		if (segment.left().joint() == Joint.RETURN) {
			RunCut end = new RunCut(spec.section(), spec.isCrown(), Length.ZERO, Length.ZERO, Cut.square(Joint.BUTT_TO_WALL), Cut.returned());
			pieces.add(piece(index, label + "/return-left", end, segment.x0(), segment.x0(), List.of(Messages.RunPieces_Return))); //$NON-NLS-1$
		}
		if (segment.right().joint() == Joint.RETURN) {
			RunCut end = new RunCut(spec.section(), spec.isCrown(), Length.ZERO, Length.ZERO, Cut.returned(), Cut.square(Joint.BUTT_TO_WALL));
			pieces.add(piece(index, label + "/return-right", end, segment.x1(), segment.x1(), List.of(Messages.RunPieces_Return))); //$NON-NLS-1$
		}
	}

	private Piece piece(int index, String label, RunCut cut, Length x0, Length x1, List<String> texts) {
		String where = NLS.bind(Messages.RunPieces_Where, new Object[] { name(index), spec.kind().word(), at(x0), at(x1) });
		return new Piece(label, spec.kind(), spec.section(), spec.material(), cut.longPoint(), cut.shortPoint(), cut.start(saw),
				cut.end(saw), cut.lie(), name(index), where, x0, x1, texts);
	}

	private String label(int index) {
		return name(index) + '/' + spec.kind().word();
	}

	private String at(Length x) {
		return LengthFormat.asShown(x, notes.unit());
	}

	private String name(int index) {
		String name = room.getWalls().get(index).getName();
		return name == null ? String.valueOf(index + 1) : name;
	}
}
