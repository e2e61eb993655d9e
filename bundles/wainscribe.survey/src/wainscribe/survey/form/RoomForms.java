// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey.form;

import static wainscribe.survey.SurveyColumn.ANGLE;
import static wainscribe.survey.SurveyColumn.DEPTH;
import static wainscribe.survey.SurveyColumn.HEIGHT;
import static wainscribe.survey.SurveyColumn.NAME;
import static wainscribe.survey.SurveyColumn.ROOM;
import static wainscribe.survey.SurveyColumn.WALL;
import static wainscribe.survey.SurveyColumn.WIDTH;
import static wainscribe.survey.form.LengthForm.DISTANCE;
import static wainscribe.survey.form.LengthForm.OFFSET;
import static wainscribe.survey.form.LengthForm.SIZE;
import static wainscribe.survey.form.RowForms.cell;
import static wainscribe.survey.form.RowForms.flag;
import static wainscribe.survey.form.RowForms.form;
import static wainscribe.survey.form.RowForms.length;
import static wainscribe.survey.form.RowForms.word;

import java.util.List;

import wainscribe.model.WainscribePackage;

/** The forms of homes, rooms, walls, diagonals and corners. */
final class RoomForms {

	private static final WainscribePackage MODEL = RowForms.model();

	private RoomForms() {
	}

	static RowForm of(RowKind kind) {
		return switch (kind) {
			case HOME -> home();
			case ROOM -> room();
			case WALL -> wall();
			case DIAGONAL -> form(MODEL.getDiagonal(), List.of(ROOM), List.of(NAME),
					List.of(cell(WIDTH, MODEL.getDiagonal_Distance(), SIZE, Messages.RoomForms_Distance)),
					new DiagonalEndField("from", MODEL.getDiagonal_From()), new DiagonalEndField("to", MODEL.getDiagonal_To())); //$NON-NLS-1$ //$NON-NLS-2$
			case CORNER -> form(MODEL.getCorner(), List.of(ROOM, WALL), List.of(NAME),
					List.of(cell(WIDTH, MODEL.getCorner_LegThis(), SIZE, Messages.RoomForms_LegThis),
							cell(HEIGHT, MODEL.getCorner_LegNext(), SIZE, Messages.RoomForms_LegNext),
							cell(DEPTH, MODEL.getCorner_Diagonal(), SIZE, Messages.RoomForms_CornerDiagonal)));
			default -> throw new IllegalArgumentException(kind.word());
		};
	}

	private static RowForm home() {
		return form(MODEL.getHome(), List.of(), List.of(NAME), List.of(),
				new AttributeField("built", MODEL.getHome_Built(), new WholeForm(1000, 2200, Messages.RoomForms_Year)), //$NON-NLS-1$
				new AttributeField("currency", MODEL.getHome_Currency(), WordForm.CURRENCY), //$NON-NLS-1$
				new AttributeField("tax", MODEL.getHome_Tax(), MeasureForm.SHARE), //$NON-NLS-1$
				new AttributeField("country", MODEL.getHome_Country(), WordForm.COUNTRY), //$NON-NLS-1$
				length("kerf", MODEL.getHome_Kerf(), DISTANCE), //$NON-NLS-1$
				length("end-trim", MODEL.getHome_EndTrim(), DISTANCE), //$NON-NLS-1$
				length("shortest-offcut", MODEL.getHome_ShortestOffcut(), SIZE)); //$NON-NLS-1$
	}

	private static RowForm room() {
		return form(MODEL.getRoom(), List.of(ROOM), List.of(),
				List.of(cell(HEIGHT, MODEL.getRoom_Height(), SIZE, null)),
				word("use", MODEL.getRoom_Use()), //$NON-NLS-1$
				new AttributeField("air", MODEL.getRoom_Air(), MeasureForm.TEMPERATURE), //$NON-NLS-1$
				new AttributeField("rh", MODEL.getRoom_Humidity(), MeasureForm.SHARE), //$NON-NLS-1$
				new AttributeField("surface", MODEL.getRoom_SurfaceTemperature(), MeasureForm.TEMPERATURE), //$NON-NLS-1$
				new AttributeField("fan", MODEL.getRoom_Fan(), MeasureForm.AIR_FLOW), //$NON-NLS-1$
				word("fan-outlet", MODEL.getRoom_FanOutlet()), //$NON-NLS-1$
				word("fan-mode", MODEL.getRoom_FanMode()), //$NON-NLS-1$
				flag("open", MODEL.getRoom_Open())); //$NON-NLS-1$
	}

	private static RowForm wall() {
		return form(MODEL.getWall(), List.of(ROOM, WALL), List.of(),
				List.of(cell(WIDTH, MODEL.getWall_Length(), SIZE, Messages.RoomForms_WallLength),
						cell(HEIGHT, MODEL.getWall_Height(), SIZE, null),
						new CellField(ANGLE, MODEL.getWall_Angle(), AngleForm.ANGLE, null)),
				length("height-right", MODEL.getWall_HeightRight(), DISTANCE), //$NON-NLS-1$
				length("floor-right", MODEL.getWall_FloorRight(), OFFSET), //$NON-NLS-1$
				length("bow", MODEL.getWall_Bow(), OFFSET), //$NON-NLS-1$
				flag("plumbing", MODEL.getWall_Plumbing()), //$NON-NLS-1$
				flag("rated", MODEL.getWall_Rated()), //$NON-NLS-1$
				length("wallboard", MODEL.getWall_Wallboard(), SIZE), //$NON-NLS-1$
				new StudField("stud")); //$NON-NLS-1$
	}
}
