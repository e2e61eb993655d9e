// SPDX-License-Identifier: EPL-2.0
package wainscribe.cli.text;

import wainscribe.model.length.LengthFormat;
import wainscribe.model.length.LengthUnit;
import wainscribe.survey.Survey;
import wainscribe.survey.SurveyImport;
import wainscribe.survey.SurveyProblem;
import wainscribe.survey.SurveyReport;
import wainscribe.survey.closure.Doubt;
import wainscribe.survey.closure.RoomClosure;

/** What reading a survey showed, for people. */
public final class SurveyText {

	private SurveyText() {
	}

	/** Returns the text, ending in a line break. */
	public static String of(Survey survey, SurveyReport report, SurveyImport.Result result, LengthUnit units) {
		StringBuilder text = new StringBuilder();
		for (RoomClosure room : report.rooms()) {
			text.append(room.room()).append(": ").append(room.walls()).append(" walls, perimeter ") //$NON-NLS-1$ //$NON-NLS-2$
					.append(LengthFormat.asShown(room.perimeter(), units));
			if (room.closure() != null) {
				text.append(", closes within ").append(room.closure().toPlainString()).append(" mm"); //$NON-NLS-1$ //$NON-NLS-2$
			}
			if (room.area() != null) {
				text.append(", ").append(room.area().toPlainString()).append(" m2"); //$NON-NLS-1$ //$NON-NLS-2$
			}
			text.append('\n');
			for (Doubt doubt : room.doubtful()) {
				text.append("  measure again: ").append(doubt.message()).append('\n'); //$NON-NLS-1$
			}
		}
		for (SurveyProblem problem : survey.problems()) {
			text.append("note: ").append(problem.inFile(survey.file())).append('\n'); //$NON-NLS-1$
		}
		text.append(count(result.changes().size(), "change")).append(", ").append(count(result.rooms().size(), "room")) //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
				.append(" in the home\n"); //$NON-NLS-1$
		return text.toString();
	}

	private static String count(int number, String what) {
		return number + " " + what + (number == 1 ? "" : "s"); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
	}
}
