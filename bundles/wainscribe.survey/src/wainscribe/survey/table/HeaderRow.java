// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey.table;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.eclipse.osgi.util.NLS;

import wainscribe.survey.QuotedText;
import wainscribe.survey.SurveyColumn;

/**
 * The header row: which column stands where.
 *
 * @param columns the columns in the order of the file
 */
record HeaderRow(List<SurveyColumn> columns) {

	HeaderRow {
		columns = List.copyOf(columns);
	}

	/** Reads the cells of the header row; empty cells behind the last name are left out. */
	static HeaderRow of(int row, List<String> cells) throws UnreadableException {
		int count = cells.size();
		while (cells.get(count - 1).isBlank()) {
			count--;
		}
		List<SurveyColumn> columns = new ArrayList<>();
		for (int i = 0; i < count; i++) {
			String cell = cells.get(i).strip();
			Optional<SurveyColumn> column = SurveyColumn.ofTitle(cell);
			if (column.isEmpty()) {
				throw new UnreadableException(row, i + 1,
						NLS.bind(Messages.HeaderRow_UnknownColumn, QuotedText.of(cell), SurveyColumn.header()));
			}
			if (columns.contains(column.get())) {
				throw new UnreadableException(row, i + 1, NLS.bind(Messages.HeaderRow_ColumnTwice, QuotedText.of(cell)));
			}
			columns.add(column.get());
		}
		Set<SurveyColumn> missing = EnumSet.allOf(SurveyColumn.class);
		missing.removeAll(columns);
		if (!missing.isEmpty()) {
			String title = missing.iterator().next().title();
			throw new UnreadableException(row, count + 1, NLS.bind(Messages.HeaderRow_ColumnMissing, title, SurveyColumn.header()));
		}
		return new HeaderRow(columns);
	}

	int size() {
		return columns.size();
	}

	SurveyColumn column(int index) {
		return columns.get(index);
	}
}
