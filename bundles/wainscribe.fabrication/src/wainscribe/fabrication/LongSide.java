// SPDX-License-Identifier: EPL-2.0
package wainscribe.fabrication;

/** On which side of a cut the long point lies. */
public enum LongSide {
	/** The cut is square. */
	NONE(""), //$NON-NLS-1$
	/** At the back, against the wall. */
	BACK("back"), //$NON-NLS-1$
	/** At the face, into the room. */
	FACE("face"), //$NON-NLS-1$
	/** At the outer edge of a frame. */
	OUTER_EDGE("outer edge"), //$NON-NLS-1$
	/** At the left edge of an upright piece. */
	LEFT_EDGE("left edge"), //$NON-NLS-1$
	/** At the right edge of an upright piece. */
	RIGHT_EDGE("right edge"), //$NON-NLS-1$
	/** At the lower edge; of a crown the edge on the wall. */
	LOWER_EDGE("lower edge"), //$NON-NLS-1$
	/** At the upper edge; of a crown the edge on the ceiling. */
	UPPER_EDGE("upper edge"); //$NON-NLS-1$

	private final String word;

	LongSide(String word) {
		this.word = word;
	}

	/** Returns the word used in files; empty for a square cut. */
	public String word() {
		return word;
	}
}
