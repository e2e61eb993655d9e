// SPDX-License-Identifier: EPL-2.0
package wainscribe.profile.shape;

import java.util.Objects;

/**
 * The further number of a shape: a proportion in per cent or a count.
 *
 * @param name  what it is, in trade words and with its unit: {@code fillets, % of the width}
 * @param least smallest value, not below 1
 * @param usual value where none is asked for
 * @param most  largest value
 */
public record ShapeParameter(String name, int least, int usual, int most) {

	/** Refuses null and limits out of order. */
	public ShapeParameter {
		Objects.requireNonNull(name);
		if (least < 1 || least > usual || usual > most) {
			throw new IllegalArgumentException("limits of a parameter: 1 <= least <= usual <= most"); //$NON-NLS-1$
		}
	}
}
