// SPDX-License-Identifier: EPL-2.0
package wainscribe.fabrication;

import java.io.IOException;
import java.io.Writer;
import java.util.List;
import java.util.Objects;

import de.siegmar.fastcsv.writer.CsvWriter;

import wainscribe.model.length.Length;
import wainscribe.model.length.LengthFormat;
import wainscribe.model.length.LengthUnit;

/**
 * Writes cut lists as CSV (RFC 4180, header row): one row a piece.
 * <p>
 * {@code length} is the exact long-point length in millimetres with its unit, {@code cut to} the nearest mark on the tape
 * of the home. Text that a spreadsheet would take for a formula - it begins with {@code = + - @}, a tab or a line break -
 * or that begins with an apostrophe gets one apostrophe put before it, so it stays text and can be had back by taking
 * that apostrophe away.
 */
public final class PieceListCsv {

	/** The columns, in their order. */
	public static final List<String> COLUMNS = List.of("label", "profile", "length", "quantity", "cut to", "short point", //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$ //$NON-NLS-4$ //$NON-NLS-5$ //$NON-NLS-6$
			"material", "face", "thickness", "room", "wall", "where", "lies", "start", "start turn", "start tilt", //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$ //$NON-NLS-4$ //$NON-NLS-5$ //$NON-NLS-6$ //$NON-NLS-7$ //$NON-NLS-8$ //$NON-NLS-9$ //$NON-NLS-10$
			"start long side", "end", "end turn", "end tilt", "end long side", "notes", "start set turn", "start set tilt", //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$ //$NON-NLS-4$ //$NON-NLS-5$ //$NON-NLS-6$ //$NON-NLS-7$ //$NON-NLS-8$
			"start open mm", "end set turn", "end set tilt", "end open mm"); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$ //$NON-NLS-4$

	private static final String FORMULA_STARTS = "=+-@\t\r\n'"; //$NON-NLS-1$

	private final LengthUnit unit;

	/**
	 * Creates a writer.
	 *
	 * @param unit unit of the home, for the tape marks
	 */
	public PieceListCsv(LengthUnit unit) {
		this.unit = Objects.requireNonNull(unit);
	}

	/**
	 * Writes the pieces of all rooms under one header.
	 *
	 * @param lists the cut lists in the order of the rooms
	 * @param out   stays open
	 * @throws IOException if writing fails
	 */
	public void write(List<CutList> lists, Writer out) throws IOException {
		CsvWriter csv = CsvWriter.builder().build(out);
		csv.writeRecord(COLUMNS);
		for (CutList list : lists) {
			for (Piece piece : list.pieces()) {
				csv.writeRecord(cells(list.room(), piece).stream().map(PieceListCsv::asText).toList());
			}
		}
		csv.flush();
	}

	private List<String> cells(String room, Piece piece) {
		return List.of(piece.label(), piece.profile(), exact(piece.longPoint()), "1", mark(piece.longPoint()), //$NON-NLS-1$
				mark(piece.shortPoint()), piece.material().getLiteral(), exact(piece.section().face()),
				exact(piece.section().thickness()), room, piece.wall(), piece.where(), piece.lie().word(),
				piece.start().joint().word(), piece.start().turn().toPlainString(), piece.start().tilt().toPlainString(),
				piece.start().longSide().word(), piece.end().joint().word(), piece.end().turn().toPlainString(),
				piece.end().tilt().toPlainString(), piece.end().longSide().word(), String.join("; ", piece.notes()), //$NON-NLS-1$
				piece.start().setting().turn().toPlainString(), piece.start().setting().tilt().toPlainString(),
				piece.start().setting().opening().toPlainString(), piece.end().setting().turn().toPlainString(),
				piece.end().setting().tilt().toPlainString(), piece.end().setting().opening().toPlainString());
	}

	private static String exact(Length length) {
		return length.toMillimetres().toPlainString() + "mm"; //$NON-NLS-1$
	}

	private String mark(Length length) {
		return LengthFormat.asTapeMark(length, unit);
	}

	/** Puts an apostrophe before text that a spreadsheet would not take as text. */
	static String asText(String cell) {
		return cell.isEmpty() || FORMULA_STARTS.indexOf(cell.charAt(0)) < 0 ? cell : '\'' + cell;
	}
}
