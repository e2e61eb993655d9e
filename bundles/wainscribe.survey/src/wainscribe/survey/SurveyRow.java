// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey;

import java.util.EnumMap;
import java.util.Map;

/**
 * A row of a survey file as it was written; comments and empty lines are no rows.
 *
 * @param row   physical line at which it starts, the first is 1
 * @param cells its cells without the spaces round them; empty cells are left out
 */
public record SurveyRow(int row, Map<SurveyColumn, String> cells) {

	/** Copies the cells. */
	public SurveyRow {
		EnumMap<SurveyColumn, String> copy = new EnumMap<>(SurveyColumn.class);
		copy.putAll(cells);
		cells = java.util.Collections.unmodifiableMap(copy);
	}

	/** Returns a cell, the empty text if it is empty. */
	public String cell(SurveyColumn column) {
		return cells.getOrDefault(column, ""); //$NON-NLS-1$
	}
}
