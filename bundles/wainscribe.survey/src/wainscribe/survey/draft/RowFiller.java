// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey.draft;

import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;

import org.eclipse.osgi.util.NLS;

import wainscribe.model.Element;
import wainscribe.model.Room;
import wainscribe.model.length.LengthUnit;
import wainscribe.survey.QuotedText;
import wainscribe.survey.SurveyColumn;
import wainscribe.survey.SurveyProblem.Severity;
import wainscribe.survey.SurveyRow;
import wainscribe.survey.form.CellField;
import wainscribe.survey.form.NoteEntry;
import wainscribe.survey.form.NoteField;
import wainscribe.survey.form.ReadingContext;
import wainscribe.survey.form.RowForm;
import wainscribe.survey.form.ValueException;

/** Fills an element from the cells and the note of its row, as the form of its kind says. */
final class RowFiller {

	private final SurveyDraft draft;

	RowFiller(SurveyDraft draft) {
		this.draft = draft;
	}

	/**
	 * Fills an element.
	 *
	 * @param room the room of the row, null for a row of the whole home
	 * @return the keys of the note
	 */
	Set<String> fill(Element target, SurveyRow row, RowForm form, Room room) {
		draft.came(target, row);
		for (SurveyColumn column : SurveyColumn.values()) {
			Optional<CellField> field = form.cell(column);
			if (field.isPresent()) {
				fillCell(target, row, field.get(), room);
			} else if (!form.uses(column) && !row.cell(column).isEmpty()) {
				draft.add(row, column, Severity.NOTICE, NLS.bind(Messages.RowFiller_CellNotUsed, QuotedText.of(row.cell(column))));
			}
		}
		Set<String> keys = new LinkedHashSet<>();
		for (String entry : NoteEntry.split(row.cell(SurveyColumn.NOTE))) {
			fillEntry(target, row, entry, form, room, keys);
		}
		return keys;
	}

	private void fillCell(Element target, SurveyRow row, CellField field, Room room) {
		SurveyColumn column = field.column();
		try {
			field.read(target, row.cell(column), new Context(room, message -> draft.doubt(row, column, message)));
		} catch (ValueException e) {
			draft.refuse(row, column, e.getMessage());
		}
	}

	private void fillEntry(Element target, SurveyRow row, String text, RowForm form, Room room, Set<String> keys) {
		NoteEntry entry;
		try {
			entry = NoteEntry.parse(text);
		} catch (ValueException e) {
			draft.refuseText(row, SurveyColumn.NOTE, QuotedText.of(text) + ": " + e.getMessage()); //$NON-NLS-1$
			return;
		}
		if (!keys.add(entry.key())) {
			draft.refuseText(row, SurveyColumn.NOTE, NLS.bind(Messages.RowFiller_KeyTwice, QuotedText.of(text)));
			return;
		}
		NoteField field = form.notes().get(entry.key());
		if (field == null) {
			draft.add(row, SurveyColumn.NOTE, Severity.NOTICE, NLS.bind(Messages.RowFiller_UnknownKey, QuotedText.of(text)));
			target.getNotes().add(text);
			return;
		}
		String prefix = entry.key() + ": " + QuotedText.of(entry.value()) + ": "; //$NON-NLS-1$ //$NON-NLS-2$
		try {
			field.read(target, entry.value(), new Context(room,
					message -> draft.add(row, SurveyColumn.NOTE, Severity.WARNING, prefix + message)));
		} catch (ValueException e) {
			draft.refuseText(row, SurveyColumn.NOTE, prefix + e.getMessage());
		}
	}

	private final class Context implements ReadingContext {

		private final Room room;
		private final java.util.function.Consumer<String> remarks;

		Context(Room room, java.util.function.Consumer<String> remarks) {
			this.room = room;
			this.remarks = remarks;
		}

		@Override
		public LengthUnit units() {
			return draft.units();
		}

		@Override
		public Set<String> patterns() {
			return draft.patterns();
		}

		@Override
		public Room room() {
			return room;
		}

		@Override
		public void remark(String message) {
			remarks.accept(message);
		}
	}
}
