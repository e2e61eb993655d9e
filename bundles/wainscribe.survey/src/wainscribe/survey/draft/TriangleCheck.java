// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey.draft;

import org.eclipse.osgi.util.NLS;

import wainscribe.model.Corner;
import wainscribe.model.length.Length;
import wainscribe.survey.SurveyColumn;
import wainscribe.survey.SurveyRow;

/** A corner whose two legs and diagonal make no triangle. */
final class TriangleCheck {

	private TriangleCheck() {
	}

	/** Refuses a diagonal that the legs cannot have; legs in one line (180 degrees) are fine. */
	static void check(SurveyDraft draft, Corner corner, SurveyRow row) {
		Length least = corner.getLegThis().minus(corner.getLegNext()).abs();
		Length most = corner.getLegThis().plus(corner.getLegNext());
		Length diagonal = corner.getDiagonal();
		if (!diagonal.isMoreThan(least) || diagonal.isMoreThan(most)) {
			draft.refuse(row, SurveyColumn.DEPTH,
					NLS.bind(Messages.TriangleCheck_NoTriangle,
							new Object[] { draft.shown(least), draft.shown(most), draft.shown(corner.getLegThis()), draft.shown(corner.getLegNext()) }));
		}
	}
}
