// SPDX-License-Identifier: EPL-2.0
package wainscribe.fabrication;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.osgi.util.NLS;

import wainscribe.layout.RoomDesign;
import wainscribe.layout.glass.GlassFrame;
import wainscribe.model.Fixture;
import wainscribe.model.Support;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.model.length.LengthFormat;

/** Cuts the frames round mirrors that are on the walls. */
record GlassPieces(RoomDesign design, PieceNotes notes, Saw saw) {

	/** Returns the sides of all mirrors of a wall that get a frame, in the order of the survey. */
	List<Piece> on(Wall wall, String name) {
		List<Piece> pieces = new ArrayList<>();
		int unnamed = 0;
		for (Fixture fixture : wall.getFixtures()) {
			GlassFrame frame = GlassFrame.of(design.home(), design.room(), design.brief(), fixture).orElse(null);
			if (frame != null) {
				boolean isNamed = fixture.getName() != null && !fixture.getName().isBlank();
				String mirror = isNamed ? fixture.getName().strip() : NLS.bind(Messages.GlassPieces_Mirror, ++unnamed);
				FrameMembers members = new FrameMembers(frame.section(), design.layout().material(), notes, saw);
				pieces.addAll(members.of(name, mirror, frame, texts(frame)));
			}
		}
		return pieces;
	}

	private List<String> texts(GlassFrame frame) {
		List<String> texts = new ArrayList<>();
		Length depth = frame.mirror().getDepth();
		texts.add(depth == null || depth.signum() <= 0
				? NLS.bind(Messages.GlassPieces_RebateUnmeasured,
						new Object[] { shown(frame.rebateWidth()), shown(frame.lap()), shown(frame.clearance()) })
				: NLS.bind(Messages.GlassPieces_Rebate,
						new Object[] { shown(frame.rebateWidth()), shown(depth), shown(frame.lap()), shown(frame.clearance()) }));
		if (frame.mirror().getSupport() == Support.CLIPS) {
			texts.add(Messages.GlassPieces_Clips);
		} else if (frame.mirror().getSupport() == Support.CHANNEL) {
			texts.add(Messages.GlassPieces_Channel);
		}
		if (!frame.reachesTheWall()) {
			texts.add(Messages.GlassPieces_Narrow);
		}
		if (!frame.leavesSight()) {
			texts.add(Messages.GlassPieces_NoSight);
		}
		return texts;
	}

	private String shown(Length length) {
		return LengthFormat.asShown(length, notes.unit());
	}
}
