// SPDX-License-Identifier: EPL-2.0
package wainscribe.takeoff;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.regex.Pattern;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;

import wainscribe.model.PriceUnit;
import wainscribe.model.length.Length;
import wainscribe.model.length.LengthParser;
import wainscribe.model.length.LengthSyntaxException;
import wainscribe.model.length.LengthUnit;

/**
 * Reads price lists: UTF-8, comma, quotes as RFC 4180, {@code #} lines are comments, header row
 * {@code item,unit,pack,pack-length,price}.
 * <p>
 * {@code unit} is {@code length} (one stock length; {@code pack-length} says how long), {@code litre}, {@code metre} or
 * {@code each} ({@code pack} says how much one pack holds, empty for 1). A bare {@code pack-length} is in the unit of the
 * home. Every pack may stand only once.
 */
public final class PriceListReader {

	/** The columns, in their order. */
	public static final List<String> COLUMNS = List.of("item", "unit", "pack", "pack-length", "price"); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$ //$NON-NLS-4$ //$NON-NLS-5$

	private static final long LARGEST_FILE = 4_000_000;
	private static final int LONGEST_SHOWN = 60;
	private static final Pattern DECIMAL = Pattern.compile("\\d{1,9}(\\.\\d{1,9})?"); //$NON-NLS-1$
	private static final Pattern MONEY = Pattern.compile("\\d{1,9}(\\.\\d{1,2})?"); //$NON-NLS-1$

	private final LengthParser lengths;

	/**
	 * Creates a reader.
	 *
	 * @param unit unit of bare lengths
	 */
	public PriceListReader(LengthUnit unit) {
		lengths = new LengthParser(Objects.requireNonNull(unit));
	}

	/**
	 * Reads a price list.
	 *
	 * @param file the file
	 * @return its rows
	 * @throws PriceListException if it is no price list; the message is the one line to show
	 * @throws IOException        if it cannot be read at all
	 */
	public PriceList read(Path file) throws PriceListException, IOException {
		String name = String.valueOf(file.getFileName());
		if (!Files.isRegularFile(file)) {
			throw new PriceListException(name, 0, "", "expected a file with the columns " + String.join(",", COLUMNS)); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
		}
		if (Files.size(file) > LARGEST_FILE) {
			throw new PriceListException(name, 0, "", "expected a price list below 4 MB"); //$NON-NLS-1$ //$NON-NLS-2$
		}
		return read(decode(name, Files.readAllBytes(file)), name);
	}

	private static String decode(String name, byte[] bytes) throws PriceListException {
		try {
			String text = StandardCharsets.UTF_8.newDecoder().onMalformedInput(CodingErrorAction.REPORT)
					.decode(ByteBuffer.wrap(bytes)).toString();
			return text.startsWith("\uFEFF") ? text.substring(1) : text; //$NON-NLS-1$
		} catch (CharacterCodingException e) {
			throw new PriceListException(name, 0, "", "expected text in UTF-8"); //$NON-NLS-1$ //$NON-NLS-2$
		}
	}

	/**
	 * Reads a price list from text.
	 *
	 * @param text what the file holds
	 * @param name name of the file, for messages
	 * @return its rows
	 * @throws PriceListException if it is no price list
	 */
	public PriceList read(String text, String name) throws PriceListException {
		List<PriceRow> rows = new ArrayList<>();
		boolean header = false;
		try (CsvReader<CsvRecord> csv = CsvReader.builder().commentStrategy(CommentStrategy.SKIP).missingFieldStrategy(FieldMismatchStrategy.IGNORE)
				.extraFieldStrategy(FieldMismatchStrategy.IGNORE).ofCsvRecord(text)) {
			for (CsvRecord cells : csv) {
				if (!header) {
					checkHeader(cells, name);
					header = true;
				} else {
					add(new Cells(cells, name), rows);
				}
			}
		} catch (CsvParseException e) {
			throw new PriceListException(name, 0, "", "expected commas and quotes as in RFC 4180: " + e.getMessage()); //$NON-NLS-1$ //$NON-NLS-2$
		} catch (IOException e) {
			throw new IllegalStateException("text in memory could not be read", e); //$NON-NLS-1$
		}
		if (!header) {
			throw new PriceListException(name, 1, "", "expected the header " + String.join(",", COLUMNS)); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
		}
		return new PriceList(rows);
	}

	private static void checkHeader(CsvRecord cells, String name) throws PriceListException {
		if (!cells.getFields().equals(COLUMNS)) {
			throw new PriceListException(name, cells.getStartingLineNumber(), "", //$NON-NLS-1$
					quoted(String.join(",", cells.getFields())) + ": expected the header " + String.join(",", COLUMNS)); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
		}
	}

	private void add(Cells cells, List<PriceRow> rows) throws PriceListException {
		if (cells.count() > COLUMNS.size()) {
			throw cells.problem("", "expected " + COLUMNS.size() + " cells, found " + cells.count()); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
		}
		String item = cells.of("item"); //$NON-NLS-1$
		if (item.isEmpty()) {
			throw cells.problem("item", "expected the id of a profile, the name of a paint, or the key of a quantity"); //$NON-NLS-1$ //$NON-NLS-2$
		}
		PriceUnit unit = PriceUnit.get(cells.of("unit")); //$NON-NLS-1$
		if (unit == null) {
			throw cells.problem("unit", quoted(cells.of("unit")) + ": expected length, litre, metre or each"); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
		}
		PriceRow row = new PriceRow(item, unit, pack(cells), packLength(cells, unit), money(cells));
		if (rows.stream().anyMatch(row::isSamePack)) {
			throw cells.problem("item", quoted(item) + ": this pack has a price already, expected each pack once"); //$NON-NLS-1$ //$NON-NLS-2$
		}
		rows.add(row);
	}

	private static BigDecimal pack(Cells cells) throws PriceListException {
		String text = cells.of("pack"); //$NON-NLS-1$
		if (text.isEmpty()) {
			return BigDecimal.ONE;
		}
		BigDecimal pack = DECIMAL.matcher(text).matches() ? new BigDecimal(text) : BigDecimal.ZERO;
		if (pack.signum() <= 0) {
			throw cells.problem("pack", quoted(text) + ": expected how much one pack holds, such as 2.5"); //$NON-NLS-1$ //$NON-NLS-2$
		}
		return pack;
	}

	private Length packLength(Cells cells, PriceUnit unit) throws PriceListException {
		String text = cells.of("pack-length"); //$NON-NLS-1$
		if (unit != PriceUnit.LENGTH) {
			if (!text.isEmpty()) {
				throw cells.problem("pack-length", quoted(text) + ": expected an empty cell, only the unit length has one"); //$NON-NLS-1$ //$NON-NLS-2$
			}
			return null;
		}
		try {
			Length length = lengths.parse(text);
			if (length.signum() > 0) {
				return length;
			}
			throw cells.problem("pack-length", quoted(text) + ": expected a length above zero"); //$NON-NLS-1$ //$NON-NLS-2$
		} catch (LengthSyntaxException e) {
			throw cells.problem("pack-length", e.getMessage()); //$NON-NLS-1$
		}
	}

	private static BigDecimal money(Cells cells) throws PriceListException {
		String text = cells.of("price"); //$NON-NLS-1$
		if (!MONEY.matcher(text).matches()) {
			throw cells.problem("price", quoted(text) + ": expected an amount such as 12.50"); //$NON-NLS-1$ //$NON-NLS-2$
		}
		return new BigDecimal(text);
	}

	private static String quoted(String text) {
		return '"' + (text.length() > LONGEST_SHOWN ? text.substring(0, LONGEST_SHOWN) + "..." : text) + '"'; //$NON-NLS-1$
	}

	/** The cells of a row by the names of their columns; cells missing at the end are empty. */
	private record Cells(CsvRecord row, String file) {

		int count() {
			return row.getFieldCount();
		}

		String of(String column) {
			int index = COLUMNS.indexOf(column);
			return index < row.getFieldCount() ? row.getField(index).strip() : ""; //$NON-NLS-1$
		}

		PriceListException problem(String column, String expected) {
			return new PriceListException(file, row.getStartingLineNumber(), column, expected);
		}
	}
}
