// SPDX-License-Identifier: EPL-2.0
package wainscribe.takeoff.cutting;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;

import wainscribe.model.length.LengthUnit;

/**
 * The text of a cutting file as rows under its header: UTF-8 with or without a byte order mark, comma, quotes as RFC 4180,
 * {@code #} lines are comments, {@code # units: in} or {@code # units: mm} before the header gives the unit of bare numbers.
 */
final class CuttingTable {

	/** Far more than any house takes, so that a wrong file never keeps anyone waiting. */
	private static final int MOST_ROWS = 50_000;
	private static final long LARGEST_FILE = 8_000_000;
	private static final Pattern UNITS = Pattern.compile("\\s*units\\s*:\\s*(.*?)[\\s,]*", Pattern.CASE_INSENSITIVE); //$NON-NLS-1$
	private static final Pattern STARTING_LINE = Pattern.compile("starting at line (\\d+)"); //$NON-NLS-1$

	private final String file;
	private final List<String> required;
	private final Set<String> allowed;
	private final List<CuttingRow> rows = new ArrayList<>();
	private List<String> header;
	private LengthUnit units;
	private boolean hasUnitsLine;

	/**
	 * Creates an empty table.
	 *
	 * @param file     the file as it was named
	 * @param required columns that must be there, in the order of the contract
	 * @param allowed  columns that may be there as well
	 * @param units    unit of bare numbers where the file names none; may be null
	 */
	CuttingTable(Path file, List<String> required, Set<String> allowed, LengthUnit units) {
		this.file = file.toString();
		this.required = required;
		this.allowed = allowed;
		this.units = units;
	}

	/** Reads the file. */
	CuttingTable read(Path path) throws CuttingFileException, IOException {
		if (!Files.isRegularFile(path)) {
			throw new CuttingFileException(file, 0, "", "expected a file with the columns " + columns()); //$NON-NLS-1$ //$NON-NLS-2$
		}
		if (Files.size(path) > LARGEST_FILE) {
			throw new CuttingFileException(file, 0, "", "expected a file below 8 MB"); //$NON-NLS-1$ //$NON-NLS-2$
		}
		read(decoded(Files.readAllBytes(path)));
		return this;
	}

	/** Returns the file as it was named. */
	String file() {
		return file;
	}

	/** Returns the rows under the header. */
	List<CuttingRow> rows() {
		return List.copyOf(rows);
	}

	/** Returns whether the file has a length in this column that is millimetres only because nothing says its unit. */
	boolean hasBare(String column) throws CuttingFileException {
		for (CuttingRow row : rows) {
			if (row.written(column).isBare()) {
				return true;
			}
		}
		return false;
	}

	/** Returns the unit of bare numbers, null if nothing says one. */
	LengthUnit units() {
		return units;
	}

	private String decoded(byte[] bytes) throws CuttingFileException {
		try {
			String text = StandardCharsets.UTF_8.newDecoder().onMalformedInput(CodingErrorAction.REPORT)
					.decode(ByteBuffer.wrap(bytes)).toString();
			return text.startsWith("\uFEFF") ? text.substring(1) : text; //$NON-NLS-1$
		} catch (CharacterCodingException e) {
			throw new CuttingFileException(file, 0, "", "is no text; expected a CSV file in UTF-8"); //$NON-NLS-1$ //$NON-NLS-2$
		}
	}

	private void read(String text) throws CuttingFileException {
		long last = 0;
		try (CsvReader<CsvRecord> csv = CsvReader.builder().commentStrategy(CommentStrategy.READ).skipEmptyLines(true)
				.extraFieldStrategy(FieldMismatchStrategy.IGNORE).missingFieldStrategy(FieldMismatchStrategy.IGNORE)
				.allowUnclosedQuote(false).trimWhitespacesAroundQuotes(true).ofCsvRecord(text)) {
			for (CsvRecord found : csv) {
				last = found.getStartingLineNumber();
				take(found);
			}
		} catch (CsvParseException e) {
			Matcher line = STARTING_LINE.matcher(String.valueOf(e.getMessage()));
			throw new CuttingFileException(file, line.find() ? Long.parseLong(line.group(1)) : last + 1, "", //$NON-NLS-1$
					"expected quotes that close, doubled inside a quoted cell"); //$NON-NLS-1$
		} catch (IOException e) {
			throw new IllegalStateException("text in memory could not be read", e); //$NON-NLS-1$
		}
		if (header == null) {
			throw new CuttingFileException(file, last + 1, "", "expected the header " + columns()); //$NON-NLS-1$ //$NON-NLS-2$
		}
	}

	private void take(CsvRecord found) throws CuttingFileException {
		if (found.isComment()) {
			takeComment(found.getField(0), found.getStartingLineNumber());
		} else if (found.getFields().stream().allMatch(String::isBlank)) {
			return;
		} else if (header == null) {
			takeHeader(found);
		} else if (rows.size() == MOST_ROWS) {
			throw new CuttingFileException(file, found.getStartingLineNumber(), "", "expected no more than " + MOST_ROWS + " rows"); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
		} else {
			takeCells(found);
		}
	}

	private void takeComment(String comment, long row) throws CuttingFileException {
		Matcher matcher = UNITS.matcher(comment);
		if (!matcher.matches()) {
			return;
		}
		if (header != null) {
			throw new CuttingFileException(file, row, "", CuttingRow.quoted('#' + comment) + ": expected before the header"); //$NON-NLS-1$ //$NON-NLS-2$
		}
		for (LengthUnit unit : LengthUnit.values()) {
			if (unit.symbol().equalsIgnoreCase(matcher.group(1))) {
				takeUnits(unit, comment, row);
				return;
			}
		}
		throw new CuttingFileException(file, row, "", //$NON-NLS-1$
				CuttingRow.quoted('#' + comment) + ": expected \"# units: in\" or \"# units: mm\""); //$NON-NLS-1$
	}

	private void takeUnits(LengthUnit unit, String comment, long row) throws CuttingFileException {
		if (hasUnitsLine && unit != units) {
			throw new CuttingFileException(file, row, "", CuttingRow.quoted('#' + comment) //$NON-NLS-1$
					+ ": expected no other unit than that of the line \"# units: " + units.symbol() + "\" above"); //$NON-NLS-1$ //$NON-NLS-2$
		}
		units = unit;
		hasUnitsLine = true;
	}

	private void takeHeader(CsvRecord found) throws CuttingFileException {
		header = new ArrayList<>();
		long row = found.getStartingLineNumber();
		for (String cell : found.getFields()) {
			String name = cell.strip().toLowerCase(Locale.ROOT);
			if (!name.isEmpty() && !required.contains(name) && !allowed.contains(name)) {
				throw new CuttingFileException(file, row, cell.strip(), "unknown; expected the columns " + columns()); //$NON-NLS-1$
			}
			if (!name.isEmpty() && header.contains(name)) {
				throw new CuttingFileException(file, row, name, "stands twice; expected the columns " + columns()); //$NON-NLS-1$
			}
			header.add(name);
		}
		for (String name : required) {
			if (!header.contains(name)) {
				throw new CuttingFileException(file, row, name, "is missing; expected the columns " + columns()); //$NON-NLS-1$
			}
		}
	}

	private void takeCells(CsvRecord found) throws CuttingFileException {
		Map<String, String> cells = new HashMap<>();
		for (int i = 0; i < found.getFieldCount(); i++) {
			String cell = found.getField(i).strip();
			if (cell.isEmpty()) {
				continue;
			}
			if (i >= header.size() || header.get(i).isEmpty()) {
				throw new CuttingFileException(file, found.getStartingLineNumber(), Integer.toString(i + 1),
						CuttingRow.quoted(cell) + ": expected no more cells than the header names, " + columns()); //$NON-NLS-1$
			}
			cells.put(header.get(i), cell);
		}
		rows.add(new CuttingRow(file, found.getStartingLineNumber(), cells, units));
	}

	private String columns() {
		return String.join(",", required); //$NON-NLS-1$
	}
}
