// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey.draft;

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
			draft.refuse(row, SurveyColumn.DEPTH, "expected a diagonal longer than " + draft.shown(least) + " and at most " //$NON-NLS-1$ //$NON-NLS-2$
					+ draft.shown(most) + ", as the legs are " + draft.shown(corner.getLegThis()) + " and " //$NON-NLS-1$ //$NON-NLS-2$
					+ draft.shown(corner.getLegNext()));
		}
	}
}
