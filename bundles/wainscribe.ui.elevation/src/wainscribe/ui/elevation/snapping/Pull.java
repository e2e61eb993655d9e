// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.snapping;

/** What draws a moved edge. */
public enum Pull {
	/** Near lines of the wall, else tape marks. */
	LINES,
	/** Tape marks only: while Alt is held. */
	MARKS,
	/** Nothing: the shift is exact already. */
	NONE
}
