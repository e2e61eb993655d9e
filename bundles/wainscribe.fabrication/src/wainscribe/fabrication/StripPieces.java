// SPDX-License-Identifier: EPL-2.0
package wainscribe.fabrication;

import java.math.BigDecimal;

import org.eclipse.osgi.util.NLS;

import wainscribe.layout.MouldingSection;
import wainscribe.layout.StripOutline;
import wainscribe.layout.Tier;
import wainscribe.model.Material;
import wainscribe.model.length.Length;

/**
 * Cuts strips: one piece each with butt ends. Level ones and upright ones between level edges are cut square; where an edge
 * climbs, the ends follow it, so the saw is turned by the pitch.
 */
record StripPieces(MouldingSection section, Material material, PieceNotes notes) {

	private static final double SQUARE = 90;

	/** Returns the piece of a strip. */
	Piece of(String wall, StripOutline strip) {
		return strip.kind().isUpright() ? upright(wall, strip) : lying(wall, strip);
	}

	private Piece upright(String wall, StripOutline strip) {
		Length right = strip.height().plus(strip.riseTop()).minus(strip.rise());
		Length top = strip.height().max(strip.height().plus(strip.riseTop()));
		Length bottom = Length.ZERO.min(strip.rise());
		Length shortPoint = strip.height().min(strip.rise().plus(right)).minus(Length.ZERO.max(strip.rise()));
		PieceEnd foot = end(foot(strip), Mitre.pitch(strip.width(), strip.rise()), LongSide.LEFT_EDGE, LongSide.RIGHT_EDGE);
		PieceEnd head = end(head(strip), Mitre.pitch(strip.width(), strip.riseTop()), LongSide.RIGHT_EDGE, LongSide.LEFT_EDGE);
		return piece(wall, strip, top.minus(bottom), shortPoint, foot, head);
	}

	private Piece lying(String wall, StripOutline strip) {
		double pitch = Mitre.pitch(strip.width(), strip.rise());
		Length edge = Mitre.sloped(strip.width(), strip.rise());
		Length slant = strip.rise().signum() == 0 ? Length.ZERO : Mitre.inset(section.face(), SQUARE - Math.abs(pitch));
		PieceEnd start = end(Joint.BUTT_TO_TRIM, pitch, LongSide.LOWER_EDGE, LongSide.UPPER_EDGE);
		PieceEnd end = end(Joint.BUTT_TO_TRIM, pitch, LongSide.UPPER_EDGE, LongSide.LOWER_EDGE);
		return piece(wall, strip, edge.plus(slant), edge.minus(slant), start, end);
	}

	/** An end that is square on the level, else turned by the pitch with its long point on one side or the other. */
	private static PieceEnd end(Joint joint, double pitch, LongSide climbing, LongSide falling) {
		BigDecimal turn = Mitre.setting(SQUARE - Math.abs(pitch));
		return turn.signum() == 0 ? PieceEnd.square(joint) : new PieceEnd(joint, turn, BigDecimal.ZERO, pitch > 0 ? climbing : falling);
	}

	private static Joint foot(StripOutline strip) {
		return strip.tier() == Tier.OVER ? Joint.BUTT_TO_CASING : Joint.BUTT_TO_TRIM;
	}

	private static Joint head(StripOutline strip) {
		return strip.tier() == Tier.UNDER ? Joint.BUTT_TO_CASING : Joint.BUTT_TO_TRIM;
	}

	private Piece piece(String wall, StripOutline strip, Length longPoint, Length shortPoint, PieceEnd start, PieceEnd end) {
		return new Piece(strip.id(), PieceKind.STRIP, section, material, longPoint, shortPoint, start, end, Lie.FLAT, wall,
				NLS.bind(Messages.StripPieces_Where, new Object[] { wall, strip.kind().word(), strip.id() }), strip.x(),
				strip.right(), notes.of(PieceKind.STRIP, longPoint, start, end));
	}
}
