// SPDX-License-Identifier: EPL-2.0
package wainscribe.takeoff.cutting;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;

import wainscribe.cutting.Offcut;
import wainscribe.cutting.PieceDemand;
import wainscribe.cutting.StockLength;
import wainscribe.fabrication.PieceListCsv;
import wainscribe.model.length.Length;
import wainscribe.model.length.LengthUnit;
import wainscribe.takeoff.cutting.CuttingInput.Needed;

/**
 * Reads the files of a cutting job.
 * <p>
 * Pieces: {@code label,profile,length,quantity}; a cut list of a client pack is taken as it is. Stock:
 * {@code profile,length,price,available} ({@code available} empty or missing: any number). Offcuts:
 * {@code label,profile,length}. Lengths are written as in a survey; where nothing says the unit of bare numbers, they are
 * millimetres.
 */
public final class CuttingFiles {

	/** Columns of the pieces. */
	public static final List<String> PIECES = List.of("label", "profile", "length", "quantity"); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$ //$NON-NLS-4$
	/** Columns of the stock. */
	public static final List<String> STOCK = List.of("profile", "length", "price", "available"); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$ //$NON-NLS-4$
	/** Columns of the offcuts. */
	public static final List<String> OFFCUTS = List.of("label", "profile", "length"); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$

	/** More pieces than any house has. */
	private static final int MOST_PIECES = 100_000;
	private static final int MOST_AVAILABLE = 999_999_999;

	private static final String PROFILE = "profile"; //$NON-NLS-1$
	private static final String LENGTH = "length"; //$NON-NLS-1$

	private final LengthUnit units;

	/**
	 * Creates a reader.
	 *
	 * @param units unit of bare numbers in files that name none; null if nothing says one
	 */
	public CuttingFiles(LengthUnit units) {
		this.units = units;
	}

	/**
	 * Reads the files.
	 *
	 * @param pieces  the pieces
	 * @param stock   what can be bought
	 * @param offcuts what is there; null for none
	 * @return what they say
	 * @throws CuttingFileException if a file is not as it should be; the message is the one line to show
	 * @throws IOException          if a file can't be read at all
	 */
	public CuttingInput read(Path pieces, Path stock, Path offcuts) throws CuttingFileException, IOException {
		CuttingTable pieceTable = new CuttingTable(pieces, PIECES, Set.copyOf(PieceListCsv.COLUMNS), units).read(pieces);
		List<Needed> needed = pieces(pieceTable);
		if (needed.isEmpty()) {
			throw new CuttingFileException(pieces.toString(), 0, "", "has no piece; expected at least one row under the header"); //$NON-NLS-1$ //$NON-NLS-2$
		}
		CuttingTable stockTable = new CuttingTable(stock, STOCK.subList(0, 3), Set.copyOf(STOCK), units).read(stock);
		List<StockLength> sold = stock(stockTable);
		List<CuttingTable> tables = new ArrayList<>(List.of(pieceTable, stockTable));
		List<Offcut> left = new ArrayList<>();
		if (offcuts != null) {
			CuttingTable offcutTable = new CuttingTable(offcuts, OFFCUTS, Set.of(), units).read(offcuts);
			left.addAll(offcuts(offcutTable));
			tables.add(offcutTable);
		}
		if (sold.isEmpty() && left.isEmpty()) {
			throw new CuttingFileException(stock.toString(), 0, "", "has no length; expected at least one row under the header"); //$NON-NLS-1$ //$NON-NLS-2$
		}
		return new CuttingInput(needed, sold, left, stock.toString(), pieceTable.units(), bare(tables));
	}

	private static List<String> bare(List<CuttingTable> tables) throws CuttingFileException {
		List<String> files = new ArrayList<>();
		for (CuttingTable table : tables) {
			if (table.hasBare(LENGTH)) {
				files.add(table.file());
			}
		}
		return files;
	}

	private static List<Needed> pieces(CuttingTable table) throws CuttingFileException {
		List<Needed> pieces = new ArrayList<>();
		long count = 0;
		for (CuttingRow row : table.rows()) {
			PieceDemand piece = new PieceDemand(row.text("label"), profile(row), row.length(LENGTH), //$NON-NLS-1$
					row.whole("quantity", 1, MOST_PIECES, "how many pieces, 1 to " + MOST_PIECES)); //$NON-NLS-1$ //$NON-NLS-2$
			count += piece.quantity();
			if (count > MOST_PIECES) {
				throw row.problem("quantity", CuttingRow.quoted(row.text("quantity")) + ": expected no more than " + MOST_PIECES //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
						+ " pieces in all"); //$NON-NLS-1$
			}
			pieces.add(new Needed(piece, row));
		}
		return pieces;
	}

	private static List<StockLength> stock(CuttingTable table) throws CuttingFileException {
		List<StockLength> stock = new ArrayList<>();
		for (CuttingRow row : table.rows()) {
			String profile = profile(row);
			Length length = row.length(LENGTH);
			BigDecimal price = row.money("price"); //$NON-NLS-1$
			OptionalInt available = row.text("available").isEmpty() ? OptionalInt.empty() //$NON-NLS-1$
					: OptionalInt.of(row.whole("available", 0, MOST_AVAILABLE, //$NON-NLS-1$
							"how many there are, 0 to " + MOST_AVAILABLE + ", or an empty cell for any number")); //$NON-NLS-1$ //$NON-NLS-2$
			stock.add(new StockLength(profile, length, price, available));
		}
		return stock;
	}

	private static List<Offcut> offcuts(CuttingTable table) throws CuttingFileException {
		List<Offcut> offcuts = new ArrayList<>();
		for (CuttingRow row : table.rows()) {
			offcuts.add(new Offcut(row.text("label"), profile(row), row.length(LENGTH))); //$NON-NLS-1$
		}
		return offcuts;
	}

	private static String profile(CuttingRow row) throws CuttingFileException {
		return row.name(PROFILE, "the name of a profile"); //$NON-NLS-1$
	}
}
