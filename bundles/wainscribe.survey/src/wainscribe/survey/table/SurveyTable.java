// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey.table;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;

import org.eclipse.osgi.util.NLS;

import wainscribe.model.length.LengthUnit;
import wainscribe.survey.QuotedText;
import wainscribe.survey.SurveyColumn;
import wainscribe.survey.SurveyProblem;
import wainscribe.survey.SurveyProblem.Severity;
import wainscribe.survey.SurveyRow;

/** The text of a survey file as rows under its header. */
public final class SurveyTable {

	private static final Pattern UNITS = Pattern.compile("\\s*units\\s*:\\s*(.*?)[\\s,]*", Pattern.CASE_INSENSITIVE); //$NON-NLS-1$
	private static final Pattern STARTING_LINE = Pattern.compile("starting at line (\\d+)"); //$NON-NLS-1$
	/** What XML cannot hold and no tape sheet needs; line breaks and tabs are text. */
	private static final Pattern UNWRITABLE = Pattern.compile("[\\x00-\\x08\\x0b\\x0c\\x0e-\\x1f\\ufffe\\uffff]"); //$NON-NLS-1$

	/** Far more than any home has, so that a wrong file never keeps anyone waiting. */
	static final int MOST_ROWS = 20_000;

	private final List<SurveyProblem> problems;
	private final List<SurveyRow> rows = new ArrayList<>();
	private HeaderRow header;
	private LengthUnit units;

	/**
	 * Creates an empty table.
	 *
	 * @param problems takes what is wrong
	 */
	public SurveyTable(List<SurveyProblem> problems) {
		this.problems = Objects.requireNonNull(problems);
	}

	/**
	 * Reads the text.
	 *
	 * @throws UnreadableException if there is no header, or quotes that do not close
	 */
	public void read(String text) throws UnreadableException {
		int row = 0;
		try {
			for (CsvRecord found : CsvReader.builder().commentStrategy(CommentStrategy.READ).skipEmptyLines(true)
					.extraFieldStrategy(FieldMismatchStrategy.IGNORE).missingFieldStrategy(FieldMismatchStrategy.IGNORE)
					.allowUnclosedQuote(false).trimWhitespacesAroundQuotes(true).ofCsvRecord(text)) {
				row = Math.toIntExact(found.getStartingLineNumber());
				take(found, row);
			}
		} catch (CsvParseException e) {
			throw badQuotes(text, e, row + 1);
		}
		int last = SurveyText.lineOf(text.stripTrailing());
		if (header == null) {
			throw new UnreadableException(last, 1, NLS.bind(Messages.SurveyTable_NoHeader, SurveyColumn.header()));
		}
		if (rows.isEmpty()) {
			throw new UnreadableException(last + 1, SurveyColumn.KIND.title(), Messages.SurveyTable_NoRows);
		}
	}

	/** Returns the unit of bare numbers, null if the file names none. */
	public LengthUnit units() {
		return units;
	}

	/** Returns the rows under the header. */
	public List<SurveyRow> rows() {
		return List.copyOf(rows);
	}

	private void take(CsvRecord found, int row) throws UnreadableException {
		if (found.isComment()) {
			takeComment(found.getField(0), row);
		} else if (found.getFields().stream().allMatch(String::isBlank)) {
			return;
		} else if (header == null) {
			header = HeaderRow.of(row, found.getFields());
		} else if (rows.size() == MOST_ROWS) {
			throw new UnreadableException(row, 1,
					NLS.bind(Messages.SurveyTable_TooManyRows, QuotedText.of(found.getField(0)), MOST_ROWS));
		} else {
			takeCells(found.getFields(), row);
		}
	}

	private void takeComment(String comment, int row) {
		Matcher matcher = UNITS.matcher(comment);
		if (!matcher.matches()) {
			return;
		}
		String quoted = QuotedText.of('#' + comment);
		LengthUnit named = unitOf(matcher.group(1));
		if (header != null) {
			refuse(row, "1", NLS.bind(Messages.SurveyTable_UnitsBelowHeader, quoted)); //$NON-NLS-1$
		} else if (named == null) {
			refuse(row, "1", NLS.bind(Messages.SurveyTable_UnitsUnknown, quoted)); //$NON-NLS-1$
		} else if (units != null && units != named) {
			refuse(row, "1", NLS.bind(Messages.SurveyTable_UnitsTwo, quoted, units.symbol())); //$NON-NLS-1$
		} else {
			units = named;
		}
	}

	private static LengthUnit unitOf(String symbol) {
		for (LengthUnit unit : LengthUnit.values()) {
			if (unit.symbol().equalsIgnoreCase(symbol)) {
				return unit;
			}
		}
		return null;
	}

	private void takeCells(List<String> cells, int row) {
		Map<SurveyColumn, String> named = new EnumMap<>(SurveyColumn.class);
		for (int i = 0; i < cells.size(); i++) {
			String cell = cells.get(i).strip();
			if (cell.isEmpty()) {
				continue;
			}
			if (i >= header.size()) {
				refuse(row, Integer.toString(i + 1), NLS.bind(Messages.SurveyTable_TooManyCells, QuotedText.of(cell), header.size()));
				break;
			}
			if (UNWRITABLE.matcher(cell).find()) {
				refuse(row, header.column(i).title(), NLS.bind(Messages.SurveyTable_ControlCharacter, QuotedText.of(cell)));
			}
			named.put(header.column(i), UNWRITABLE.matcher(cell).replaceAll("\ufffd")); //$NON-NLS-1$
		}
		rows.add(new SurveyRow(row, named));
	}

	private void refuse(int row, String column, String message) {
		problems.add(new SurveyProblem(row, column, Severity.ERROR, message));
	}

	/** Finds the cell whose quotes are wrong; the parser names only the row. */
	private UnreadableException badQuotes(String text, CsvParseException e, int nextRow) {
		Matcher matcher = STARTING_LINE.matcher(String.valueOf(e.getMessage()));
		int row = matcher.find() ? Integer.parseInt(matcher.group(1)) : nextRow;
		String rest = text.lines().skip(row - 1L).limit(1).findFirst().orElse(""); //$NON-NLS-1$
		UnclosedCell cell = UnclosedCell.in(rest);
		boolean isNamed = header != null && cell.number() <= header.size();
		String column = isNamed ? header.column(cell.number() - 1).title() : Integer.toString(cell.number());
		return new UnreadableException(row, column, NLS.bind(Messages.SurveyTable_Quotes, QuotedText.of(cell.text())));
	}
}
