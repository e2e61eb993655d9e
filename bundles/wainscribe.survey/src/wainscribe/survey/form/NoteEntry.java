// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey.form;

import java.util.List;
import java.util.Locale;

/**
 * One {@code key=value} of a note.
 *
 * @param key   in small letters
 * @param value as written, without the spaces round it
 */
public record NoteEntry(String key, String value) {

	/** Splits a note into the texts of its entries; empty ones are left out. */
	public static List<String> split(String note) {
		return NoteText.split(note, NoteText.ENTRY_SEPARATOR).stream().map(String::strip).filter(entry -> !entry.isEmpty())
				.toList();
	}

	/** Reads the text of an entry. */
	public static NoteEntry parse(String text) throws ValueException {
		int equals = text.indexOf('=');
		if (equals <= 0 || text.substring(0, equals).isBlank()) {
			throw new ValueException(Messages.NoteEntry_Syntax);
		}
		return new NoteEntry(text.substring(0, equals).strip().toLowerCase(Locale.ROOT), text.substring(equals + 1).strip());
	}
}
