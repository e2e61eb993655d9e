// SPDX-License-Identifier: EPL-2.0
package wainscribe.takeoff.cutting;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

import wainscribe.cutting.CuttingJob;
import wainscribe.cutting.Offcut;
import wainscribe.cutting.PieceDemand;
import wainscribe.cutting.StockLength;
import wainscribe.model.length.Length;
import wainscribe.model.length.LengthFormat;
import wainscribe.model.length.LengthUnit;

/** What the files of a cutting job say. */
public final class CuttingInput {

	private final List<Needed> needed;
	private final List<StockLength> stock;
	private final List<Offcut> offcuts;
	private final String stockFile;
	private final LengthUnit units;
	private final List<String> bareFiles;

	/** A piece and the row it stands in. */
	record Needed(PieceDemand piece, CuttingRow row) {
	}

	CuttingInput(List<Needed> needed, List<StockLength> stock, List<Offcut> offcuts, String stockFile, LengthUnit units,
			List<String> bareFiles) {
		this.needed = List.copyOf(needed);
		this.stock = List.copyOf(stock);
		this.offcuts = List.copyOf(offcuts);
		this.stockFile = stockFile;
		this.units = units;
		this.bareFiles = List.copyOf(bareFiles);
	}

	/** Returns the unit of bare lengths in the file of the pieces; null if nothing says one. */
	public LengthUnit units() {
		return units;
	}

	/** Returns the files, as they were named, with bare lengths that are millimetres only because nothing says their unit. */
	public List<String> bareFiles() {
		return bareFiles;
	}

	/**
	 * Returns the job, in which every leftover counts as an offcut.
	 *
	 * @param kerf    width of the saw cut
	 * @param endTrim what comes off every bar before the first piece
	 * @throws CuttingFileException if a piece is of a profile that there is no length of, or longer than every length
	 */
	public CuttingJob job(Length kerf, Length endTrim) throws CuttingFileException {
		Map<String, Length> longest = new HashMap<>();
		stock.forEach(bar -> longest.merge(bar.profile(), bar.length(), Length::max));
		offcuts.forEach(bar -> longest.merge(bar.profile(), bar.length(), Length::max));
		for (Needed piece : needed) {
			check(piece, longest.get(piece.piece().profile()), endTrim);
		}
		return new CuttingJob(needed.stream().map(Needed::piece).toList(), stock, offcuts, kerf, endTrim, Length.ZERO);
	}

	private void check(Needed piece, Length bar, Length endTrim) throws CuttingFileException {
		String profile = CuttingRow.quoted(piece.piece().profile());
		if (bar == null) {
			Set<String> known = new TreeSet<>(Stream.concat(stock.stream().map(StockLength::profile),
					offcuts.stream().map(Offcut::profile)).toList());
			throw piece.row().problem("profile", profile + ": there is no length of it; expected one of the profiles in " + stockFile //$NON-NLS-1$ //$NON-NLS-2$
					+ ", " + known); //$NON-NLS-1$
		}
		Length most = bar.minus(endTrim).max(Length.ZERO);
		if (piece.piece().length().isMoreThan(most)) {
			throw piece.row().problem("length", CuttingRow.quoted(piece.row().text("length")) + ": longer than every length of " //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
					+ profile + "; expected at most " + LengthFormat.asStored(most) //$NON-NLS-1$
					+ (endTrim.signum() == 0 ? "" : " after " + LengthFormat.asStored(endTrim) + " end trim")); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
		}
	}
}
