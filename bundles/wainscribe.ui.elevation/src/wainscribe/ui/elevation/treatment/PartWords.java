// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.treatment;

import wainscribe.commands.TreatmentPart;

/** What the parts of a treatment are called on buttons. */
final class PartWords {

	private PartWords() {
	}

	static String of(TreatmentPart part) {
		return switch (part) {
			case PATTERN -> Messages.PartWords_Pattern;
			case RAIL -> Messages.PartWords_Rail;
			case GAPS -> Messages.PartWords_Gaps;
			case MOULDING -> Messages.PartWords_Moulding;
			case BASE_AND_CROWN -> Messages.PartWords_BaseAndCrown;
			case STOCK -> Messages.PartWords_Stock;
		};
	}
}
