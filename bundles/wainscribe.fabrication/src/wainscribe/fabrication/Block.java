// SPDX-License-Identifier: EPL-2.0
package wainscribe.fabrication;

import java.util.Objects;

import wainscribe.model.length.Length;

/**
 * A block that a run stops at: a short piece of square stock, not of the moulding.
 *
 * @param label     stable name, unique in the room
 * @param use       what it is
 * @param wall      name of its wall; a corner block stands at that wall's right end
 * @param width     along the wall
 * @param height    upwards
 * @param thickness out from the wall
 * @param where     where it goes, for the carpenter
 */
public record Block(String label, Use use, String wall, Length width, Length height, Length thickness, String where) {

	/** What a block is for. */
	public enum Use {
		/** In an inside corner, so that runs need neither cope nor mitre. */
		CORNER("corner block"), //$NON-NLS-1$
		/** Under a casing that is thinner than the base. */
		PLINTH("plinth block"); //$NON-NLS-1$

		private final String word;

		Use(String word) {
			this.word = word;
		}

		/** Returns the trade word used in files. */
		public String word() {
			return word;
		}
	}

	/** Refuses nulls. */
	public Block {
		Objects.requireNonNull(label);
		Objects.requireNonNull(use);
		Objects.requireNonNull(wall);
		Objects.requireNonNull(width);
		Objects.requireNonNull(height);
		Objects.requireNonNull(thickness);
		Objects.requireNonNull(where);
	}
}
