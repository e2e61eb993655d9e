// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey.form;

import static wainscribe.survey.SurveyColumn.NAME;
import static wainscribe.survey.SurveyColumn.ROOM;
import static wainscribe.survey.SurveyColumn.WALL;
import static wainscribe.survey.form.LengthForm.DISTANCE;
import static wainscribe.survey.form.LengthForm.SIZE;
import static wainscribe.survey.form.RowForms.flag;
import static wainscribe.survey.form.RowForms.form;
import static wainscribe.survey.form.RowForms.length;
import static wainscribe.survey.form.RowForms.word;

import java.util.List;

import wainscribe.model.WainscribePackage;

/** The forms of coatings that are there and of what was decided. */
final class DecisionForms {

	private static final WainscribePackage MODEL = RowForms.model();

	private DecisionForms() {
	}

	static RowForm of(RowKind kind) {
		return switch (kind) {
			case FINISH -> form(MODEL.getFinish(), List.of(), List.of(ROOM, WALL, NAME), List.of(),
					new ZoneSurfaceField("surface", MODEL.getFinish_Zone(), List.of("walls", "trim", "ceiling", "floor")), //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$ //$NON-NLS-4$ //$NON-NLS-5$
					word("gloss", MODEL.getFinish_Gloss()), word("binder", MODEL.getFinish_Binder()), //$NON-NLS-1$ //$NON-NLS-2$
					word("substrate", MODEL.getFinish_Substrate()), word("sound", MODEL.getFinish_Sound()), //$NON-NLS-1$ //$NON-NLS-2$
					flag("texture", MODEL.getFinish_Texture()), flag("disturb", MODEL.getFinish_Disturb())); //$NON-NLS-1$ //$NON-NLS-2$
			case PAINT -> form(MODEL.getPaint(), List.of(), List.of(ROOM, WALL, NAME), List.of(),
					new ZoneSurfaceField("surface", MODEL.getPaint_Zone(), List.of("walls", "trim", "ceiling", "lower", "upper")), //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$ //$NON-NLS-4$ //$NON-NLS-5$ //$NON-NLS-6$
					new AttributeField("colour", MODEL.getPaint_Colour(), WordForm.COLOUR), //$NON-NLS-1$
					word("gloss", MODEL.getPaint_Gloss()), word("binder", MODEL.getPaint_Binder()), //$NON-NLS-1$ //$NON-NLS-2$
					new AttributeField("scrub", MODEL.getPaint_Scrub(), new WholeForm(1, 5, Messages.DecisionForms_ScrubClass)), //$NON-NLS-1$
					flag("mildew", MODEL.getPaint_Mildew()), //$NON-NLS-1$
					new AttributeField("coats", MODEL.getPaint_Coats(), new WholeForm(1, 9, Messages.DecisionForms_Coats)), //$NON-NLS-1$
					flag("clean", MODEL.getPaint_Clean()), flag("degloss", MODEL.getPaint_Degloss()), //$NON-NLS-1$ //$NON-NLS-2$
					word("primer", MODEL.getPaint_Primer())); //$NON-NLS-1$
			case BRIEF -> brief();
			default -> throw new IllegalArgumentException(kind.word());
		};
	}

	private static RowForm brief() {
		return form(MODEL.getBrief(), List.of(), List.of(ROOM, NAME), List.of(),
				new AttributeField("pattern", MODEL.getBrief_Pattern(), WordForm.PATTERN), //$NON-NLS-1$
				length("rail", MODEL.getBrief_Rail(), SIZE), //$NON-NLS-1$
				length("rail-face", MODEL.getBrief_RailFace(), SIZE), //$NON-NLS-1$
				length("rail-thick", MODEL.getBrief_RailThickness(), SIZE), //$NON-NLS-1$
				length("gap", MODEL.getBrief_Gap(), SIZE), //$NON-NLS-1$
				length("gap-y", MODEL.getBrief_GapY(), SIZE), //$NON-NLS-1$
				length("face", MODEL.getBrief_Face(), SIZE), //$NON-NLS-1$
				length("thick", MODEL.getBrief_Thickness(), SIZE), //$NON-NLS-1$
				new SpanField("frame-width"), //$NON-NLS-1$
				length("base", MODEL.getBrief_Base(), DISTANCE), //$NON-NLS-1$
				length("crown", MODEL.getBrief_Crown(), DISTANCE), //$NON-NLS-1$
				word("material", MODEL.getBrief_Material()), //$NON-NLS-1$
				new AttributeField("stock", MODEL.getBrief_Stock(), new ListForm(SIZE)), //$NON-NLS-1$
				length("nail", MODEL.getBrief_Nail(), SIZE), //$NON-NLS-1$
				length("board", MODEL.getBrief_Board(), SIZE), //$NON-NLS-1$
				new AttributeField("board-walls", MODEL.getBrief_BoardWalls(), new ListForm(WallNameForm.WALL_NAME)), //$NON-NLS-1$
				word("inside", MODEL.getBrief_Inside()), word("base-at-casing", MODEL.getBrief_BaseAtCasing()), //$NON-NLS-1$ //$NON-NLS-2$
				word("saw", MODEL.getBrief_Saw()), length("glass-lap", MODEL.getBrief_GlassLap(), SIZE), //$NON-NLS-1$ //$NON-NLS-2$
				length("glass-clearance", MODEL.getBrief_GlassClearance(), DISTANCE)); //$NON-NLS-1$
	}
}
