// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey.form;

import static wainscribe.survey.SurveyColumn.NAME;
import static wainscribe.survey.SurveyColumn.ROOM;
import static wainscribe.survey.SurveyColumn.WALL;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;

import wainscribe.model.WainscribePackage;
import wainscribe.survey.SurveyColumn;

/** The forms of all kinds of rows. Reading and writing both follow them, so that nothing is lost between the two. */
public final class RowForms {

	private static final Map<RowKind, RowForm> FORMS = all();

	private RowForms() {
	}

	/** Returns the form of a kind. */
	public static RowForm of(RowKind kind) {
		return FORMS.get(kind);
	}

	private static Map<RowKind, RowForm> all() {
		Map<RowKind, RowForm> forms = new EnumMap<>(RowKind.class);
		for (RowKind kind : RowKind.values()) {
			forms.put(kind, switch (kind) {
				case HOME, ROOM, WALL, DIAGONAL, CORNER -> RoomForms.of(kind);
				case DOOR, WINDOW, BOX, FIXTURE, TRIM, STUD, PIPE, CABLE, FRAME -> PlacedForms.of(kind);
				case FINISH, BRIEF, PAINT -> DecisionForms.of(kind);
			});
		}
		return Map.copyOf(forms);
	}

	/** Puts a form together. */
	static RowForm form(EClass type, List<SurveyColumn> needed, List<SurveyColumn> taken, List<CellField> cells,
			NoteField... notes) {
		Map<String, NoteField> keyed = new LinkedHashMap<>();
		for (NoteField field : notes) {
			keyed.put(field.key(), field);
		}
		return new RowForm(type, Set.copyOf(needed), Set.copyOf(taken), cells, keyed);
	}

	/** Puts a form of something on a wall together; its name is its own choice. */
	static RowForm placed(EClass type, List<CellField> cells, NoteField... notes) {
		return form(type, List.of(ROOM, WALL), List.of(NAME), cells, notes);
	}

	/** A key for a length. */
	static NoteField length(String key, EAttribute attribute, LengthForm form) {
		return new AttributeField(key, attribute, form);
	}

	/** A key for yes or no. */
	static NoteField flag(String key, EAttribute attribute) {
		return new AttributeField(key, attribute, FlagForm.FLAG);
	}

	/** A key for a word of the attribute's enumeration; all of them, or those given. */
	static NoteField word(String key, EAttribute attribute, String... words) {
		org.eclipse.emf.ecore.EEnum type = (org.eclipse.emf.ecore.EEnum) attribute.getEAttributeType();
		return new AttributeField(key, attribute,
				words.length == 0 ? LiteralForm.of(type) : new LiteralForm(type, List.of(words)));
	}

	/** A cell for a length. */
	static CellField cell(SurveyColumn column, EAttribute attribute, LengthForm form, String required) {
		return new CellField(column, attribute, form, required);
	}

	/** Returns the package of the model, which must be there before its literals are used. */
	static WainscribePackage model() {
		return WainscribePackage.eINSTANCE;
	}
}
