// SPDX-License-Identifier: EPL-2.0
package wainscribe.fabrication;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

import org.eclipse.osgi.util.NLS;

import wainscribe.layout.FrameOutline;
import wainscribe.layout.MouldingSection;
import wainscribe.layout.glass.GlassFrame;
import wainscribe.model.Material;
import wainscribe.model.length.Length;
import wainscribe.model.outline.Outline;

/**
 * Takes a frame apart into its four mitred sides.
 * <p>
 * Left and right sides stand plumb. On a slope the corners differ from square by the pitch, so the saw has one setting for
 * the acute and another for the obtuse corners.
 */
record FrameMembers(MouldingSection section, Material material, PieceNotes notes, Saw saw) {

	private static final double SQUARE = 90;

	/** Where a frame is and what it is called. */
	private record Place(String wall, String id, String shown, Length x, Length right, List<String> notes) {
	}

	/** Returns top, bottom, left and right side. */
	List<Piece> of(String wall, FrameOutline frame) {
		return sides(new Place(wall, frame.id(), frame.id(), frame.x(), frame.x().plus(frame.width()), List.of()), frame.width(),
				frame.height(), frame.rise(), frame.riseTop());
	}

	/** Returns the four sides of the frame round a mirror. */
	List<Piece> of(String wall, String name, GlassFrame frame, List<String> texts) {
		Outline outer = frame.outer();
		return sides(new Place(wall, wall + '/' + name, name, outer.x0(), outer.x1(), texts), outer.width(), outer.height(),
				Length.ZERO, Length.ZERO);
	}

	private List<Piece> sides(Place place, Length width, Length height, Length rise, Length riseTop) {
		double pitch = Mitre.pitch(width, rise);
		double pitchTop = Mitre.pitch(width, riseTop);
		double bottomLeft = SQUARE - pitch;
		double bottomRight = SQUARE + pitch;
		double topLeft = SQUARE + pitchTop;
		double topRight = SQUARE - pitchTop;
		Length rightHeight = height.plus(riseTop).minus(rise);
		return List.of(side(place, "top", Messages.Side_Top, Mitre.sloped(width, riseTop), topLeft, topRight), //$NON-NLS-1$
				side(place, "bottom", Messages.Side_Bottom, Mitre.sloped(width, rise), bottomLeft, bottomRight), //$NON-NLS-1$
				side(place, "left", Messages.Side_Left, height, bottomLeft, topLeft), //$NON-NLS-1$
				side(place, "right", Messages.Side_Right, rightHeight, bottomRight, topRight)); //$NON-NLS-1$
	}

	private Piece side(Place place, String side, String shown, Length outer, double startCorner, double endCorner) {
		Length inner = outer.minus(Mitre.inset(section.face(), startCorner / 2))
				.minus(Mitre.inset(section.face(), endCorner / 2));
		PieceEnd start = end(startCorner);
		PieceEnd end = end(endCorner);
		List<String> texts = new ArrayList<>(place.notes());
		texts.addAll(notes.of(PieceKind.FRAME, outer, start, end));
		return new Piece(place.id() + '/' + side, PieceKind.FRAME, section, material, outer, inner, start, end, Lie.FLAT,
				place.wall(), NLS.bind(Messages.FrameMembers_Where, new Object[] { place.wall(), place.shown(), shown }),
				"right".equals(side) ? place.right().minus(section.face()) : place.x(), //$NON-NLS-1$
				"left".equals(side) ? place.x().plus(section.face()) : place.right(), texts); //$NON-NLS-1$
	}

	private PieceEnd end(double corner) {
		return saw.set(new PieceEnd(Joint.FRAME_MITRE, Mitre.setting(corner / 2), BigDecimal.ZERO, LongSide.OUTER_EDGE),
				section.face(), section.thickness());
	}
}
