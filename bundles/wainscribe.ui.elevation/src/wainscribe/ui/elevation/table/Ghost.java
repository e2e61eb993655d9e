// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.table;

import wainscribe.ui.elevation.Messages;

/** Which other wall is shown through the one that is worked on. */
public enum Ghost {

	/** None. */
	NONE(Messages.Ghost_None),
	/** The wall across the room. */
	OPPOSITE(Messages.Ghost_Opposite),
	/** The wall that ends at the left corner. */
	LEFT(Messages.Ghost_Left),
	/** The wall that begins at the right corner. */
	RIGHT(Messages.Ghost_Right);

	private final String label;

	Ghost(String label) {
		this.label = label;
	}

	/** Returns its name for people. */
	public String label() {
		return label;
	}

	/** Returns the one that comes after this; after the last comes the first. */
	public Ghost next() {
		return values()[(ordinal() + 1) % values().length];
	}
}
