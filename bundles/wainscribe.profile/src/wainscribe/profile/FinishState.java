// SPDX-License-Identifier: EPL-2.0
package wainscribe.profile;

import java.util.Arrays;
import java.util.Optional;

/** How a moulding comes from the yard. */
public enum FinishState {

	/** Not recorded. */
	UNRECORDED("unrecorded"), //$NON-NLS-1$
	/** Raw wood, MDF or plaster: to be primed on all sides. */
	BARE("bare"), //$NON-NLS-1$
	/** Primed: to be painted. */
	PRIMED("primed"), //$NON-NLS-1$
	/** Finished; only cuts and nail holes are touched up. */
	PREFINISHED("prefinished"); //$NON-NLS-1$

	private final String literal;

	FinishState(String literal) {
		this.literal = literal;
	}

	/** Returns the word written in files. */
	public String literal() {
		return literal;
	}

	/** Finds the state that a file names; empty if there is none of that word. */
	public static Optional<FinishState> of(String literal) {
		return Arrays.stream(values()).filter(state -> state.literal.equals(literal)).findFirst();
	}
}
