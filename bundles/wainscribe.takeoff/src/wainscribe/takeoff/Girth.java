// SPDX-License-Identifier: EPL-2.0
package wainscribe.takeoff;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

import wainscribe.fabrication.Piece;
import wainscribe.fabrication.PieceKind;
import wainscribe.profile.ProfileCatalogue;

/** How wide the painted face of a moulding is when laid out flat. */
record Girth(ProfileCatalogue profiles) {

	private static final int MICROMETRES = 3;

	/** Returns the painted area of pieces in square metres. */
	BigDecimal area(List<Piece> pieces) {
		return pieces.stream().map(piece -> of(piece).movePointLeft(3).multiply(Amounts.metres(piece.longPoint())))
				.reduce(BigDecimal.ZERO, BigDecimal::add);
	}

	/**
	 * Returns the girth of a piece in millimetres: that of its profile, else face and both edges, of a base face and upper
	 * edge, of a crown the straight line from wall to ceiling.
	 */
	BigDecimal of(Piece piece) {
		double girth = profiles.find(piece.section().id()).map(profile -> profile.girthMillimetres())
				.orElseGet(() -> plain(piece));
		return BigDecimal.valueOf(girth).setScale(MICROMETRES, RoundingMode.HALF_UP);
	}

	private static double plain(Piece piece) {
		double face = piece.section().face().approximateMillimetres();
		double thickness = piece.section().thickness().approximateMillimetres();
		if (piece.kind() == PieceKind.CROWN) {
			return Math.hypot(face, thickness);
		}
		return piece.kind() == PieceKind.BASE ? face + thickness : face + 2 * thickness;
	}
}
