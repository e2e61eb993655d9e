// SPDX-License-Identifier: EPL-2.0
package wainscribe.finishes.colour.list;

import java.io.IOException;
import java.io.Reader;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;

/**
 * Reads lists of colours as CSV of any size: UTF-8, comma, quotes as RFC 4180, {@code #} lines above the header are comments. The header has
 * {@code name}, perhaps {@code code}, and colours in one way: {@code L,a,b} (D65, 2 degrees), {@code srgb} ({@code #rrggbb}), or wavelengths
 * in nm with reflectance from 0 to 1. A row that gives no colour is left out and named.
 */
public final class ColourListReader {

	/**
	 * Reads a list.
	 *
	 * @param text the content; not closed
	 * @param file name of the file, for messages
	 * @throws ColourListException if it is no list of colours
	 * @throws IOException if it cannot be read at all
	 */
	public ColourList read(Reader text, String file) throws ColourListException, IOException {
		List<NamedColour> colours = new ArrayList<>();
		List<String> refused = new ArrayList<>();
		Rows rows = null;
		try {
			for (CsvRecord cells : CsvReader.builder().commentStrategy(CommentStrategy.NONE).detectBomHeader(true)
					.missingFieldStrategy(FieldMismatchStrategy.IGNORE).extraFieldStrategy(FieldMismatchStrategy.IGNORE).ofCsvRecord(text)) {
				if (rows != null) {
					rows.add(cells, colours, refused);
				} else if (!cells.getField(0).startsWith("#")) { //$NON-NLS-1$
					rows = Rows.of(cells, file);
				}
			}
		} catch (CsvParseException e) {
			throw new ColourListException(file, 0, "", "expected commas and quotes as in RFC 4180: " + e.getMessage()); //$NON-NLS-1$ //$NON-NLS-2$
		}
		if (rows == null) {
			throw new ColourListException(file, 1, "", "expected a header with name and L,a,b or srgb or wavelengths"); //$NON-NLS-1$ //$NON-NLS-2$
		}
		return new ColourList(file, colours, refused);
	}

	/** What the header says of the rows below it. */
	private record Rows(String file, int width, int name, int code, ColourColumns columns) {

		static Rows of(CsvRecord header, String file) throws ColourListException {
			List<String> names = header.getFields().stream().map(String::trim).toList();
			if (new HashSet<>(names).size() != names.size()) {
				throw new ColourListException(file, header.getStartingLineNumber(), "", "a column twice; expected each once"); //$NON-NLS-1$ //$NON-NLS-2$
			}
			if (!names.contains("name")) { //$NON-NLS-1$
				throw new ColourListException(file, header.getStartingLineNumber(), "", "expected a column name"); //$NON-NLS-1$ //$NON-NLS-2$
			}
			return new Rows(file, names.size(), names.indexOf("name"), names.indexOf("code"), //$NON-NLS-1$ //$NON-NLS-2$
					ColourColumns.of(names, file, header.getStartingLineNumber()));
		}

		void add(CsvRecord cells, List<NamedColour> colours, List<String> refused) {
			if (cells.getFieldCount() != width) {
				refused.add(line(cells, "", "found " + cells.getFieldCount() + " cells, expected " + width)); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
				return;
			}
			ColourColumns.Reading reading = columns.read(cells.getFields());
			reading.colour().ifPresentOrElse(
					colour -> colours.add(new NamedColour(cells.getField(name).trim(), code < 0 ? "" : cells.getField(code).trim(), colour)), //$NON-NLS-1$
					() -> refused.add(line(cells, reading.fault().column(), reading.fault().expected())));
		}

		private String line(CsvRecord cells, String column, String expected) {
			return Objects.requireNonNull(new ColourListException(file, cells.getStartingLineNumber(), column, expected).getMessage());
		}
	}
}
