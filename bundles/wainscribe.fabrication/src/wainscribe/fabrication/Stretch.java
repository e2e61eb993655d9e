// SPDX-License-Identifier: EPL-2.0
package wainscribe.fabrication;

import java.util.Objects;
import java.util.Optional;

import wainscribe.model.length.Length;

/**
 * A clear stretch of a wall for a run of moulding.
 *
 * @param x0    left end, from the wall's left end
 * @param x1    right end
 * @param left  what stops it at the left
 * @param right what stops it at the right
 */
record Stretch(Length x0, Length x1, Halt left, Halt right) {

	/** What kind of thing stops a run. */
	enum Stop {
		/** The end of the wall. */
		CORNER,
		/** The casing of a door or window. */
		CASING,
		/** A fixture. */
		FIXTURE,
		/** The distance that a hot fixture needs: the run ends in the open. */
		DISTANCE,
		/** Moulding that stays. */
		TRIM
	}

	/**
	 * What stops a run.
	 *
	 * @param stop  the kind of thing
	 * @param width of a casing, along the wall; else zero
	 * @param proud how far a casing stands out from the wall; null where it was not measured, or of other things
	 */
	record Halt(Stop stop, Length width, Length proud) {

		static final Halt AT_CORNER = of(Stop.CORNER);

		Halt {
			Objects.requireNonNull(stop);
			Objects.requireNonNull(width);
		}

		static Halt of(Stop stop) {
			return new Halt(stop, Length.ZERO, null);
		}

		/** Tells whether it is a casing that a moulding of this thickness stands out from. */
		boolean isThinnerThan(Length thickness) {
			return stop == Stop.CASING && Optional.ofNullable(proud).filter(thickness::isMoreThan).isPresent();
		}
	}

	Length length() {
		return x1.minus(x0);
	}
}
