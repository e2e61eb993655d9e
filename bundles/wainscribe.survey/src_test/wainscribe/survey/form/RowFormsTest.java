// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey.form;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Set;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** The note keys of all kinds, as the survey format promises them. */
class RowFormsTest {

	@ParameterizedTest
	@CsvSource({ "HOME, built currency tax country kerf end-trim shortest-offcut", "ROOM, use air rh surface fan fan-outlet fan-mode open",
			"WALL, height-right floor-right bow plumbing rated wallboard stud", "DIAGONAL, from to",
			"DOOR, casing casing-depth reveal stool apron swing egress glazing at", "WINDOW, casing casing-depth reveal stool apron swing egress glazing at",
			"BOX, type gang gfci shaver at",
			"FIXTURE, type heat tank-gap tank-top wet-edge behind support fixing mass load gap opening-x opening-w opening-h new framed at",
			"TRIM, type keep raked at", "STUD, at", "PIPE, at", "CABLE, at", "FRAME, at",
			"FINISH, surface gloss binder substrate sound texture disturb",
			"BRIEF, pattern rail rail-face rail-thick gap gap-y face thick frame-width base crown material stock nail board board-walls inside base-at-casing saw glass-lap glass-clearance",
			"PAINT, surface colour gloss binder scrub mildew coats clean degloss primer" })
	void keysAreThoseOfTheFormat(RowKind kind, String keys) {
		assertEquals(Set.of(keys.split(" ")), RowForms.of(kind).notes().keySet());
	}

	@ParameterizedTest
	@EnumSource
	void everyKindHasAFormAndAWord(RowKind kind) {
		assertEquals(kind, RowKind.ofWord(kind.word().toUpperCase(java.util.Locale.ROOT)).orElseThrow());
		for (NoteField field : RowForms.of(kind).notes().values()) {
			assertEquals(field, RowForms.of(kind).notes().get(field.key()));
		}
	}
}
