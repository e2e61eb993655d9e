// SPDX-License-Identifier: EPL-2.0
package wainscribe.fabrication;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

import org.eclipse.osgi.util.NLS;

import wainscribe.fabrication.CornerJoints.Cut;
import wainscribe.fabrication.CornerJoints.Meeting;
import wainscribe.fabrication.Stretch.Stop;
import wainscribe.layout.MouldingSection;
import wainscribe.model.Material;
import wainscribe.model.Room;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.model.length.LengthFormat;
import wainscribe.model.outline.WallShape;

/** Cuts one run of moulding - rail, base or crown - that goes round a room. */
final class RunPieces {

	private final Room room;
	private final RunSpec spec;
	private final PieceNotes notes;
	private final RoomCorners corners;
	private final CornerJoints joints;
	private final List<List<Stretch>> stretches = new ArrayList<>();

	/**
	 * What runs round the room.
	 *
	 * @param kind     rail, base or crown
	 * @param section  its moulding
	 * @param material what it is made of
	 * @param bottom   its lower edge above the floor line; of a crown its drop below the ceiling line
	 * @param top      its upper edge above the floor line; of a crown zero
	 * @param notes    what was assumed of it
	 */
	record RunSpec(PieceKind kind, MouldingSection section, Material material, Length bottom, Length top,
			List<String> notes) {
	}

	RunPieces(Room room, RunSpec spec, PieceNotes notes) {
		this.room = room;
		this.spec = spec;
		this.notes = notes;
		corners = new RoomCorners(room);
		joints = new CornerJoints(spec.material());
		for (Wall wall : room.getWalls()) {
			stretches.add(Stretches.of(wall, obstructions(wall)));
		}
	}

	/** Returns the pieces of one wall from left to right. */
	List<Piece> on(int wall) {
		List<Piece> pieces = new ArrayList<>();
		for (Stretch stretch : stretches.get(wall)) {
			pieces.add(piece(wall, stretch, pieces.size() + 1));
		}
		return pieces;
	}

	private Obstructions obstructions(Wall wall) {
		if (spec.kind() != PieceKind.CROWN) {
			return new Obstructions(spec.kind(), spec.bottom(), spec.top(), spec.material());
		}
		WallShape shape = WallShape.of(wall);
		Length ceiling = shape.ceilingLeft().min(shape.ceilingRight().minus(shape.floorRight()));
		return new Obstructions(spec.kind(), ceiling.minus(spec.bottom()), ceiling.max(shape.ceilingLeft()), spec.material());
	}

	private Piece piece(int index, Stretch stretch, int number) {
		Wall wall = room.getWalls().get(index);
		RunCut cut = new RunCut(spec.section(), spec.kind() == PieceKind.CROWN, stretch.x1().minus(stretch.x0()),
				rise(wall, stretch), leftCut(index, stretch), rightCut(index, stretch));
		List<String> texts = new ArrayList<>(spec.notes());
		if (cut.isSloped()) {
			texts.add(NLS.bind(Messages.RunPieces_Sloped, Mitre.setting(90 - Math.abs(cut.pitch())).toPlainString()));
		}
		texts.addAll(notes.of(spec.kind(), cut.longPoint(), cut.start(), cut.end()));
		String name = wall.getName() == null ? String.valueOf(index + 1) : wall.getName();
		String label = name + '/' + spec.kind().word() + (stretches.get(index).size() > 1 ? "-" + number : ""); //$NON-NLS-1$ //$NON-NLS-2$
		String where = NLS.bind(Messages.RunPieces_Where, new Object[] { name, spec.kind().word(),
				LengthFormat.asShown(stretch.x0(), notes.unit()), LengthFormat.asShown(stretch.x1(), notes.unit()) });
		return new Piece(label, spec.kind(), spec.section(), spec.material(), cut.longPoint(), cut.shortPoint(), cut.start(),
				cut.end(), cut.lie(), name, where, stretch.x0(), stretch.x1(), texts);
	}

	private Length rise(Wall wall, Stretch stretch) {
		WallShape shape = WallShape.of(wall);
		return spec.kind() == PieceKind.CROWN ? shape.ceilingAt(stretch.x1()).minus(shape.ceilingAt(stretch.x0()))
				: shape.floorAt(stretch.x1()).minus(shape.floorAt(stretch.x0()));
	}

	private Cut leftCut(int wall, Stretch stretch) {
		OptionalInt before = corners.previous(wall);
		if (stretch.left() != Stop.CORNER || before.isEmpty()) {
			return plumb(wall, Cut.square(joint(stretch.left())));
		}
		int other = before.getAsInt();
		List<Stretch> neighbour = stretches.get(other);
		boolean meets = !neighbour.isEmpty() && neighbour.getLast().right() == Stop.CORNER;
		return corner(wall, other, corners.angleAfter(other), meeting(other, meets, false), false);
	}

	private Cut rightCut(int wall, Stretch stretch) {
		OptionalInt after = corners.next(wall);
		if (stretch.right() != Stop.CORNER || after.isEmpty()) {
			return plumb(wall, Cut.square(joint(stretch.right())));
		}
		int other = after.getAsInt();
		List<Stretch> neighbour = stretches.get(other);
		boolean meets = !neighbour.isEmpty() && neighbour.getFirst().left() == Stop.CORNER;
		return corner(wall, other, corners.angleAfter(wall), meeting(other, meets, true), true);
	}

	private Meeting meeting(int other, boolean meets, boolean atItsLeft) {
		if (meets) {
			return Meeting.NEW;
		}
		Wall wall = room.getWalls().get(other);
		return obstructions(wall).keptAtEnd(wall, atItsLeft) ? Meeting.KEPT : Meeting.NOTHING;
	}

	private Cut corner(int wall, int other, double angle, Meeting meeting, boolean first) {
		if (CornerJoints.isStraight(angle) && meeting == Meeting.NEW && pitch(wall) != pitch(other)) {
			return Cut.rake(pitch(wall), pitch(other));
		}
		return plumb(wall, joints.at(angle, meeting, first));
	}

	private Cut plumb(int wall, Cut cut) {
		return pitch(wall) == 0 ? cut : cut.plumb(pitch(wall));
	}

	/** A crown's cut across the face comes from its spring; where the ceiling slopes it is fitted on site. */
	private double pitch(int wall) {
		WallShape shape = WallShape.of(room.getWalls().get(wall));
		return spec.kind() == PieceKind.CROWN ? 0 : Mitre.pitch(shape.length(), shape.floorRight());
	}

	private static Joint joint(Stop stop) {
		return switch (stop) {
			case CASING -> Joint.BUTT_TO_CASING;
			case FIXTURE -> Joint.BUTT_TO_FIXTURE;
			case TRIM -> Joint.BUTT_TO_TRIM;
			case CORNER -> Joint.SQUARE_END;
		};
	}
}
