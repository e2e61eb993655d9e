// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey.form;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.eclipse.emf.ecore.EClass;

import wainscribe.survey.SurveyColumn;

/**
 * How rows of one kind are filled in: which names they need, what their cells and note keys stand for.
 *
 * @param type   class of the model
 * @param needed which of the columns room, wall and name must be filled
 * @param taken  which of them may be filled
 * @param cells  cells of numbers
 * @param notes  keys of the note, in the order in which they are written
 */
public record RowForm(EClass type, Set<SurveyColumn> needed, Set<SurveyColumn> taken, List<CellField> cells,
		Map<String, NoteField> notes) {

	/** Copies all. */
	public RowForm {
		needed = Set.copyOf(needed);
		taken = Set.copyOf(taken);
		cells = List.copyOf(cells);
		notes = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(notes));
	}

	/** Finds the field of a cell, if rows of this kind use it. */
	public Optional<CellField> cell(SurveyColumn column) {
		return cells.stream().filter(field -> field.column() == column).findFirst();
	}

	/** Tells whether rows of this kind use a column at all. */
	public boolean uses(SurveyColumn column) {
		return column == SurveyColumn.KIND || column == SurveyColumn.NOTE || needed.contains(column) || taken.contains(column)
				|| cell(column).isPresent();
	}
}
