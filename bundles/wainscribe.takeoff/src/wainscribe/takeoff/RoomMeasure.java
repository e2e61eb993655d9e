// SPDX-License-Identifier: EPL-2.0
package wainscribe.takeoff;

import java.math.BigDecimal;
import java.util.List;

import wainscribe.fabrication.CutList;
import wainscribe.fabrication.Piece;
import wainscribe.fabrication.PieceKind;
import wainscribe.layout.RoomDesign;

/** A room with its pieces, from which quantities are taken. */
record RoomMeasure(RoomDesign design, CutList cutList) {

	/** Returns the pieces of a kind. */
	List<Piece> pieces(PieceKind kind) {
		return cutList.pieces().stream().filter(piece -> piece.kind() == kind).toList();
	}

	/** Returns the metres of all pieces of a kind in some rooms. */
	static BigDecimal metres(List<RoomMeasure> rooms, PieceKind kind) {
		return rooms.stream().flatMap(room -> room.pieces(kind).stream()).map(piece -> Amounts.metres(piece.longPoint()))
				.reduce(BigDecimal.ZERO, BigDecimal::add);
	}

	/** Returns the number of pieces of a kind in some rooms. */
	static int count(List<RoomMeasure> rooms, PieceKind kind) {
		return rooms.stream().mapToInt(room -> (int) room.pieces(kind).stream().filter(piece -> !piece.isReturn()).count()).sum();
	}
}
