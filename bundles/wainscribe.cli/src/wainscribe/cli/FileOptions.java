// SPDX-License-Identifier: EPL-2.0
package wainscribe.cli;

import java.io.IOException;
import java.nio.file.Path;

import picocli.CommandLine.Option;
import wainscribe.model.length.LengthUnit;
import wainscribe.takeoff.cutting.CuttingFileException;
import wainscribe.takeoff.cutting.CuttingFiles;
import wainscribe.takeoff.cutting.CuttingInput;

/** The options that name the files of a cutting job. */
final class FileOptions {

	@Option(names = "--pieces", required = true, paramLabel = "P.csv", description = "Pieces needed (label,profile,length,quantity).")
	private Path pieces;

	@Option(names = "--stock", required = true, paramLabel = "S.csv", description = {
			"Lengths sold (profile,length,price,available); available empty: any number." })
	private Path stock;

	@Option(names = "--offcuts", paramLabel = "O.csv", description = "Leftovers that are there (label,profile,length).")
	private Path offcuts;

	/**
	 * Reads the files.
	 *
	 * @param units unit of bare numbers in files that name none; null if nothing says one: they are millimetres
	 */
	CuttingInput read(LengthUnit units) throws BadInputException {
		try {
			return new CuttingFiles(units).read(pieces, stock, offcuts);
		} catch (CuttingFileException e) {
			throw new BadInputException(e.getMessage());
		} catch (IOException e) {
			throw new BadInputException("a file can't be read (" + e.getMessage() + "); expected CSV files"); //$NON-NLS-1$ //$NON-NLS-2$
		}
	}
}
