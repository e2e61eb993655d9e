// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules;

import wainscribe.model.Box;
import wainscribe.model.BoxType;
import wainscribe.model.ExistingTrim;
import wainscribe.model.Fixture;
import wainscribe.model.Opening;
import wainscribe.model.Placed;
import wainscribe.model.Service;

/** What to call a surveyed thing: its own name, else the word of the survey for what it is. */
final class SurveyedName {

	private SurveyedName() {
	}

	static String of(Placed placed) {
		if (placed.getName() != null && !placed.getName().isBlank()) {
			return placed.getName();
		}
		return switch (placed) {
			case Opening opening -> opening.getKind().getLiteral();
			case Fixture fixture -> fixture.getType().getLiteral();
			case Box box -> box.getType() == BoxType.UNRECORDED ? "box" : box.getType().getLiteral(); //$NON-NLS-1$
			case ExistingTrim trim -> trim.getType().getLiteral();
			case Service service -> service.getKind().getLiteral();
			default -> "frame"; //$NON-NLS-1$
		};
	}
}
