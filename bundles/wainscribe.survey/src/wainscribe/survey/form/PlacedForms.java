// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey.form;

import static wainscribe.survey.form.LengthForm.DISTANCE;
import static wainscribe.survey.form.LengthForm.OFFSET;
import static wainscribe.survey.form.LengthForm.SIZE;
import static wainscribe.survey.form.RowForms.cell;
import static wainscribe.survey.form.RowForms.flag;
import static wainscribe.survey.form.RowForms.length;
import static wainscribe.survey.form.RowForms.placed;
import static wainscribe.survey.form.RowForms.word;

import java.util.List;

import wainscribe.model.WainscribePackage;
import wainscribe.survey.SurveyColumn;

/** The forms of what sits on or in a wall. */
final class PlacedForms {

	private static final WainscribePackage MODEL = RowForms.model();
	private static final NoteField AT = new CentreField("at"); //$NON-NLS-1$
	private static final String FROM_LEFT = Messages.PlacedForms_FromLeft;
	private static final String FROM_FLOOR = Messages.PlacedForms_FromFloor;

	private PlacedForms() {
	}

	static RowForm of(RowKind kind) {
		return switch (kind) {
			case DOOR -> opening(cells(FROM_LEFT, null, Messages.PlacedForms_DoorWidth, Messages.PlacedForms_Height));
			case WINDOW -> opening(cells(FROM_LEFT, FROM_FLOOR, Messages.PlacedForms_WindowWidth, Messages.PlacedForms_Height));
			case BOX -> placed(MODEL.getBox(), cells(FROM_LEFT, FROM_FLOOR, null, null), word("type", MODEL.getBox_Type()), //$NON-NLS-1$
					new AttributeField("gang", MODEL.getBox_Gang(), new WholeForm(1, 12, Messages.PlacedForms_Gangs)), //$NON-NLS-1$
					flag("gfci", MODEL.getBox_Gfci()), flag("shaver", MODEL.getBox_Shaver()), AT); //$NON-NLS-1$ //$NON-NLS-2$
			case FIXTURE -> fixture();
			case TRIM -> placed(MODEL.getExistingTrim(), cells(null, null, null, Messages.PlacedForms_FaceHeight),
					word("type", MODEL.getExistingTrim_Type()), flag("keep", MODEL.getExistingTrim_Keep()), //$NON-NLS-1$ //$NON-NLS-2$
					flag("raked", MODEL.getExistingTrim_Raked()), AT); //$NON-NLS-1$
			case STUD, PIPE, CABLE -> placed(MODEL.getService(), cells(FROM_LEFT, null, null, null), AT);
			case FRAME -> placed(MODEL.getPlacedFrame(), cells(FROM_LEFT, FROM_FLOOR, Messages.PlacedForms_FrameWidth, Messages.PlacedForms_Height), AT);
			default -> throw new IllegalArgumentException(kind.word());
		};
	}

	private static List<CellField> cells(String x, String y, String width, String height) {
		return List.of(cell(SurveyColumn.X, MODEL.getPlaced_X(), OFFSET, x), cell(SurveyColumn.Y, MODEL.getPlaced_Y(), OFFSET, y),
				cell(SurveyColumn.WIDTH, MODEL.getPlaced_Width(), SIZE, width),
				cell(SurveyColumn.HEIGHT, MODEL.getPlaced_Height(), SIZE, height),
				cell(SurveyColumn.DEPTH, MODEL.getPlaced_Depth(), DISTANCE, null));
	}

	private static RowForm opening(List<CellField> cells) {
		return placed(MODEL.getOpening(), cells, length("casing", MODEL.getOpening_Casing(), DISTANCE), //$NON-NLS-1$
				length("casing-depth", MODEL.getOpening_CasingDepth(), DISTANCE), //$NON-NLS-1$
				length("reveal", MODEL.getOpening_Reveal(), DISTANCE), //$NON-NLS-1$
				length("stool", MODEL.getOpening_Stool(), DISTANCE), //$NON-NLS-1$
				length("apron", MODEL.getOpening_Apron(), DISTANCE), //$NON-NLS-1$
				word("swing", MODEL.getOpening_Swing()), flag("egress", MODEL.getOpening_Egress()), //$NON-NLS-1$ //$NON-NLS-2$
				word("glazing", MODEL.getOpening_Glazing()), AT); //$NON-NLS-1$
	}

	private static RowForm fixture() {
		return placed(MODEL.getFixture(), cells(FROM_LEFT, null, null, null), word("type", MODEL.getFixture_Type()), //$NON-NLS-1$
				word("heat", MODEL.getFixture_Heat()), //$NON-NLS-1$
				length("tank-gap", MODEL.getFixture_TankGap(), DISTANCE), //$NON-NLS-1$
				length("tank-top", MODEL.getFixture_TankTop(), DISTANCE), //$NON-NLS-1$
				length("wet-edge", MODEL.getFixture_WetEdge(), DISTANCE), //$NON-NLS-1$
				flag("behind", MODEL.getFixture_Behind()), //$NON-NLS-1$
				word("support", MODEL.getFixture_Support()), word("fixing", MODEL.getFixture_Fixing()), //$NON-NLS-1$ //$NON-NLS-2$
				new AttributeField("mass", MODEL.getFixture_Mass(), MeasureForm.MASS), //$NON-NLS-1$
				new AttributeField("load", MODEL.getFixture_Load(), MeasureForm.MASS), //$NON-NLS-1$
				length("gap", MODEL.getFixture_Gap(), DISTANCE), //$NON-NLS-1$
				length("opening-x", MODEL.getFixture_OpeningX(), DISTANCE), //$NON-NLS-1$
				length("opening-w", MODEL.getFixture_OpeningWidth(), SIZE), //$NON-NLS-1$
				length("opening-h", MODEL.getFixture_OpeningHeight(), SIZE), //$NON-NLS-1$
				flag("new", MODEL.getFixture_Planned()), flag("framed", MODEL.getFixture_Framed()), AT); //$NON-NLS-1$ //$NON-NLS-2$
	}
}
