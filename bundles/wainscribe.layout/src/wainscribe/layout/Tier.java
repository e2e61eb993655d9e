// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout;

import java.util.Locale;

/** The band of a wall that frames fill. */
public enum Tier {
	/** From the top of the base to the underside of the rail. */
	LOWER,
	/** From the top of the rail to the crown or the ceiling. */
	UPPER,
	/** From the top of the base to the crown or the ceiling. */
	FULL,
	/** Below an opening that reaches into the tier. */
	UNDER,
	/** Above an opening that reaches into the tier. */
	OVER,
	/** A further band that a contributed pattern makes. */
	EXTRA;

	/** Returns the word used in files and messages: {@code lower}, {@code upper} ... */
	public String word() {
		return name().toLowerCase(Locale.ROOT);
	}
}
