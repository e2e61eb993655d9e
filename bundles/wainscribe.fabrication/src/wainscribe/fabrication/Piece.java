// SPDX-License-Identifier: EPL-2.0
package wainscribe.fabrication;

import java.util.List;
import java.util.Objects;

import wainscribe.layout.MouldingSection;
import wainscribe.model.Material;
import wainscribe.model.length.Length;
import wainscribe.model.length.LengthFormat;

/**
 * One piece of moulding to cut.
 *
 * @param label      stable name, unique in the room: frame id and side ({@code A1/top}), or wall and kind ({@code A/rail-2})
 * @param kind       what it belongs to
 * @param section    its moulding
 * @param material   what it is made of
 * @param longPoint  from the outermost point of one end to that of the other: the stock it takes, without kerf
 * @param shortPoint from the innermost point of one end to that of the other
 * @param start      its left end, of an upright piece the lower one
 * @param end        its right end, of an upright piece the upper one
 * @param lie        how it lies on the saw
 * @param wall       name of its wall
 * @param where      where it goes, for the carpenter
 * @param x0         where it begins, from the wall's left end
 * @param x1         where it ends
 * @param notes      what else has to be known before cutting
 */
public record Piece(String label, PieceKind kind, MouldingSection section, Material material, Length longPoint,
		Length shortPoint, PieceEnd start, PieceEnd end, Lie lie, String wall, String where, Length x0, Length x1,
		List<String> notes) {

	/** Copies the notes; refuses nulls. */
	public Piece {
		Objects.requireNonNull(label);
		Objects.requireNonNull(kind);
		Objects.requireNonNull(section);
		Objects.requireNonNull(material);
		Objects.requireNonNull(longPoint);
		Objects.requireNonNull(shortPoint);
		Objects.requireNonNull(start);
		Objects.requireNonNull(end);
		Objects.requireNonNull(lie);
		Objects.requireNonNull(wall);
		Objects.requireNonNull(where);
		Objects.requireNonNull(x0);
		Objects.requireNonNull(x1);
		notes = List.copyOf(notes);
	}

	/** Tells whether it is the short return at a mitred end: glued on, never nailed. */
	public boolean isReturn() {
		return kind != PieceKind.FRAME && x0.equals(x1) && (start.joint() == Joint.RETURN || end.joint() == Joint.RETURN);
	}

	/**
	 * Returns what the piece is cut from: the id of its profile, or kind, face and thickness where none was chosen
	 * ({@code frame 32 mm x 16 mm}, {@code rail 2 1/2" x 3/4"}). Prices refer to the same text.
	 */
	public String profile() {
		if (!section.id().isEmpty()) {
			return section.id();
		}
		return kind.word() + ' ' + LengthFormat.asStored(section.face()) + " x " + LengthFormat.asStored(section.thickness()); //$NON-NLS-1$
	}
}
