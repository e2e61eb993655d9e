// SPDX-License-Identifier: EPL-2.0
package wainscribe.finishes.coating;

import java.io.IOException;
import java.io.Reader;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import wainscribe.model.Binder;
import wainscribe.model.GlossLevel;

/** Reads coating systems: UTF-8, comma, quotes as RFC 4180, {@code #} lines are comments, header row of {@link #COLUMNS}. */
public final class CoatingReader {

	/** The columns, in their order. */
	public static final List<String> COLUMNS = List.of("id", "name", "binder", "gloss", "scrub", "mildew", "hiding", "spread", "solids", //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$ //$NON-NLS-4$ //$NON-NLS-5$ //$NON-NLS-6$ //$NON-NLS-7$ //$NON-NLS-8$ //$NON-NLS-9$
			"recoat", "cure", "coldest", "warmest", "dampest", "voc"); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$ //$NON-NLS-4$ //$NON-NLS-5$ //$NON-NLS-6$

	/**
	 * Reads coating systems.
	 *
	 * @param text the content; not closed
	 * @param file name of the file, for messages
	 * @throws CoatingException if it is no list of coating systems; the message is the one line to show
	 * @throws IOException if it cannot be read at all
	 */
	public List<CoatingSystem> read(Reader text, String file) throws CoatingException, IOException {
		List<CoatingSystem> systems = new ArrayList<>();
		Set<String> ids = new HashSet<>();
		boolean header = false;
		try {
			for (CsvRecord cells : CsvReader.builder().commentStrategy(CommentStrategy.SKIP).detectBomHeader(true)
					.missingFieldStrategy(FieldMismatchStrategy.IGNORE).extraFieldStrategy(FieldMismatchStrategy.IGNORE).ofCsvRecord(text)) {
				if (!header) {
					if (!cells.getFields().equals(COLUMNS)) {
						throw new CoatingException(file, cells.getStartingLineNumber(), "", "expected the header " + String.join(",", COLUMNS)); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
					}
					header = true;
					continue;
				}
				CoatingSystem system = new Row(cells, file).system();
				if (!ids.add(system.id())) {
					throw new CoatingException(file, cells.getStartingLineNumber(), "id", '"' + system.id() + "\" twice; expected each once"); //$NON-NLS-1$ //$NON-NLS-2$
				}
				systems.add(system);
			}
		} catch (CsvParseException e) {
			throw new CoatingException(file, 0, "", "expected commas and quotes as in RFC 4180: " + e.getMessage()); //$NON-NLS-1$ //$NON-NLS-2$
		}
		if (!header) {
			throw new CoatingException(file, 1, "", "expected the header " + String.join(",", COLUMNS)); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
		}
		return List.copyOf(systems);
	}

	/** One row and how its cells are understood. */
	private record Row(CsvRecord cells, String file) {

		CoatingSystem system() throws CoatingException {
			if (cells.getFieldCount() != COLUMNS.size()) {
				throw new CoatingException(file, cells.getStartingLineNumber(), "", //$NON-NLS-1$
						"found " + cells.getFieldCount() + " cells, expected " + COLUMNS.size()); //$NON-NLS-1$ //$NON-NLS-2$
			}
			double coldest = number("coldest", -20, 40); //$NON-NLS-1$
			double warmest = number("warmest", -20, 60); //$NON-NLS-1$
			if (warmest <= coldest) {
				throw bad("warmest", "a temperature above " + cell("coldest")); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
			}
			return new CoatingSystem(text("id"), text("name"), binder(), gloss(), (int) number("scrub", 1, 5), yes(), //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
					number("hiding", 1, 100), number("spread", 1, 30), number("solids", 1, 100), number("recoat", 0, 336), //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$ //$NON-NLS-4$
					number("cure", 0, 365), coldest, warmest, number("dampest", 1, 100), number("voc", 0, 1000)); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
		}

		private String cell(String column) {
			return cells.getField(COLUMNS.indexOf(column)).trim();
		}

		private String text(String column) throws CoatingException {
			if (cell(column).isEmpty()) {
				throw bad(column, "a text"); //$NON-NLS-1$
			}
			return cell(column);
		}

		private double number(String column, double least, double most) throws CoatingException {
			try {
				double number = Double.parseDouble(cell(column));
				if (number >= least && number <= most) {
					return number;
				}
			} catch (NumberFormatException e) {
				throw bad(column, "a number from " + least + " to " + most); //$NON-NLS-1$ //$NON-NLS-2$
			}
			throw bad(column, "a number from " + least + " to " + most); //$NON-NLS-1$ //$NON-NLS-2$
		}

		private Binder binder() throws CoatingException {
			Binder binder = Binder.get(cell("binder")); //$NON-NLS-1$
			if (binder == null || binder == Binder.UNRECORDED || binder == Binder.UNKNOWN) {
				throw bad("binder", "acrylic, alkyd or limewash"); //$NON-NLS-1$ //$NON-NLS-2$
			}
			return binder;
		}

		private GlossLevel gloss() throws CoatingException {
			GlossLevel gloss = GlossLevel.get(cell("gloss")); //$NON-NLS-1$
			if (gloss == null || gloss == GlossLevel.UNRECORDED) {
				throw bad("gloss", "G1 to G7"); //$NON-NLS-1$ //$NON-NLS-2$
			}
			return gloss;
		}

		private boolean yes() throws CoatingException {
			return switch (cell("mildew")) { //$NON-NLS-1$
			case "yes" -> true; //$NON-NLS-1$
			case "no" -> false; //$NON-NLS-1$
			default -> throw bad("mildew", "yes or no"); //$NON-NLS-1$ //$NON-NLS-2$
			};
		}

		private CoatingException bad(String column, String expected) {
			return new CoatingException(file, cells.getStartingLineNumber(), column, '"' + cell(column) + "\": expected " + expected); //$NON-NLS-1$
		}
	}
}
