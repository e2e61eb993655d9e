// SPDX-License-Identifier: EPL-2.0
package wainscribe.fabrication;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

import wainscribe.layout.FrameOutline;
import wainscribe.layout.RoomDesign;
import wainscribe.layout.StripOutline;
import wainscribe.layout.WallLayout;
import wainscribe.model.ExistingTrim;
import wainscribe.model.Room;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.profile.ProfileCatalogue;

/**
 * Derives the cut list of a design: frames, frames of mirrors, rail, base and crown, each piece with its lengths, ends and saw settings.
 * <p>
 * Existing moulding that stays gives no piece and ends the runs it meets; moulding that goes is listed as a removal. The
 * same design always gives the same pieces with the same labels.
 */
public final class CutLists {

	private final ProfileCatalogue profiles;

	/**
	 * Creates the service.
	 *
	 * @param profiles the profiles that designs refer to
	 */
	public CutLists(ProfileCatalogue profiles) {
		this.profiles = Objects.requireNonNull(profiles);
	}

	/**
	 * Derives the cut list of a room.
	 *
	 * @param design the room with its layout
	 * @return its pieces and removals; empty lists where nothing is to be done
	 */
	public CutList of(RoomDesign design) {
		Room room = design.room();
		JointPractice practice = JointPractice.of(design);
		PieceNotes notes = new PieceNotes(design.brief().units(), design.brief().longestStock());
		Saw saw = new Saw(practice.sawStep());
		FrameMembers members = new FrameMembers(design.layout().profile(), design.layout().material(), notes, saw);
		GlassPieces mirrors = new GlassPieces(design, notes, saw);
		WallStuds studs = new WallStuds();
		StripPieces strips = new StripPieces(design.layout().profile(), design.layout().material(), notes);
		List<RunPieces> runs = new ArrayList<>();
		for (RunSpec spec : new RunSpecs(profiles).of(design)) {
			runs.add(new RunPieces(design, spec, notes, practice, studs));
		}
		List<Piece> pieces = new ArrayList<>();
		List<Removal> removals = new ArrayList<>();
		List<Block> blocks = new ArrayList<>();
		for (int i = 0; i < room.getWalls().size(); i++) {
			Wall wall = room.getWalls().get(i);
			for (FrameOutline frame : framesOn(design, wall)) {
				pieces.addAll(members.of(name(wall, i), frame));
			}
			for (StripOutline strip : stripsOn(design, wall)) {
				pieces.add(strips.of(name(wall, i), strip));
			}
			pieces.addAll(mirrors.on(wall, name(wall, i)));
			for (RunPieces run : runs) {
				pieces.addAll(run.on(i));
				blocks.addAll(run.blocksOn(i));
			}
			addRemovals(wall, name(wall, i), removals);
		}
		return new CutList(room.getName() == null ? "" : room.getName(), pieces, removals, blocks); //$NON-NLS-1$
	}

	private static List<StripOutline> stripsOn(RoomDesign design, Wall wall) {
		return design.layout().of(wall).stream().flatMap(WallLayout::strips).toList();
	}

	private static List<FrameOutline> framesOn(RoomDesign design, Wall wall) {
		return design.layout().of(wall).stream().flatMap(WallLayout::frames).toList();
	}

	private static void addRemovals(Wall wall, String name, List<Removal> removals) {
		for (ExistingTrim trim : wall.getTrims()) {
			if (Boolean.FALSE.equals(trim.getKeep())) {
				Length x = trim.getX() == null ? Length.ZERO : trim.getX();
				Length end = wall.getLength() == null ? x : wall.getLength();
				Length length = trim.getWidth() == null ? end.minus(x).max(Length.ZERO) : trim.getWidth();
				removals.add(new Removal(name, trim.getType(), trim.getName() == null ? "" : trim.getName(), length)); //$NON-NLS-1$
			}
		}
	}

	private static String name(Wall wall, int index) {
		return wall.getName() == null ? String.valueOf(index + 1) : wall.getName();
	}
}
