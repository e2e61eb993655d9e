// SPDX-License-Identifier: EPL-2.0
package wainscribe.fabrication;

import java.math.BigDecimal;
import java.util.List;

import org.eclipse.osgi.util.NLS;

import wainscribe.layout.FrameOutline;
import wainscribe.layout.MouldingSection;
import wainscribe.model.Material;
import wainscribe.model.length.Length;

/**
 * Takes a frame apart into its four mitred sides.
 * <p>
 * Left and right sides stand plumb. On a slope the corners differ from square by the pitch, so the saw has one setting for
 * the acute and another for the obtuse corners.
 */
record FrameMembers(MouldingSection section, Material material, PieceNotes notes) {

	private static final double SQUARE = 90;

	/** Returns top, bottom, left and right side. */
	List<Piece> of(String wall, FrameOutline frame) {
		double pitch = Mitre.pitch(frame.width(), frame.rise());
		double pitchTop = Mitre.pitch(frame.width(), frame.riseTop());
		double bottomLeft = SQUARE - pitch;
		double bottomRight = SQUARE + pitch;
		double topLeft = SQUARE + pitchTop;
		double topRight = SQUARE - pitchTop;
		Length rightHeight = frame.height().plus(frame.riseTop()).minus(frame.rise());
		return List.of(
				side(wall, frame, "top", Messages.Side_Top, Mitre.sloped(frame.width(), frame.riseTop()), topLeft, topRight), //$NON-NLS-1$
				side(wall, frame, "bottom", Messages.Side_Bottom, Mitre.sloped(frame.width(), frame.rise()), bottomLeft, //$NON-NLS-1$
						bottomRight),
				side(wall, frame, "left", Messages.Side_Left, frame.height(), bottomLeft, topLeft), //$NON-NLS-1$
				side(wall, frame, "right", Messages.Side_Right, rightHeight, bottomRight, topRight)); //$NON-NLS-1$
	}

	private Piece side(String wall, FrameOutline frame, String side, String shown, Length outer, double startCorner,
			double endCorner) {
		Length inner = outer.minus(Mitre.inset(section.face(), startCorner / 2))
				.minus(Mitre.inset(section.face(), endCorner / 2));
		PieceEnd start = end(startCorner);
		PieceEnd end = end(endCorner);
		boolean atRight = "right".equals(side); //$NON-NLS-1$
		boolean atLeft = "left".equals(side); //$NON-NLS-1$
		return new Piece(frame.id() + '/' + side, PieceKind.FRAME, section, material, outer, inner, start, end, Lie.FLAT, wall,
				NLS.bind(Messages.FrameMembers_Where, new Object[] { wall, frame.id(), shown }),
				atRight ? frame.right().minus(section.face()) : frame.x(),
				atLeft ? frame.x().plus(section.face()) : frame.right(), notes.of(PieceKind.FRAME, outer, start, end));
	}

	private static PieceEnd end(double corner) {
		return new PieceEnd(Joint.FRAME_MITRE, Mitre.setting(corner / 2), BigDecimal.ZERO, LongSide.OUTER_EDGE);
	}
}
