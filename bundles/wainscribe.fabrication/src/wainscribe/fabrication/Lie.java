// SPDX-License-Identifier: EPL-2.0
package wainscribe.fabrication;

/** How a piece lies on the saw while it is cut. */
public enum Lie {
	/** Back down on the table. */
	FLAT("flat"), //$NON-NLS-1$
	/** On its lower edge, back against the fence, as it will stand on the wall. */
	ON_EDGE("on edge"); //$NON-NLS-1$

	private final String word;

	Lie(String word) {
		this.word = word;
	}

	/** Returns the word used in files. */
	public String word() {
		return word;
	}
}
