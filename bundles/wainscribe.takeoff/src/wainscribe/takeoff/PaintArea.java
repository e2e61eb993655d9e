// SPDX-License-Identifier: EPL-2.0
package wainscribe.takeoff;

import java.math.BigDecimal;
import java.util.Objects;
import java.util.Optional;

import wainscribe.model.Paint;
import wainscribe.model.Surface;

/**
 * What a paint covers of one wall, or of all trim, the ceiling or the floor.
 *
 * @param paint   the paint decided
 * @param surface the surface it goes on
 * @param wall    name of the wall; empty for trim, ceiling and floor
 * @param area    square metres with new moulding by its girth; empty where it cannot be found
 * @param formula how the area was found, or why it cannot be
 * @param coats   number of coats
 * @param litres  area by coats and spreading rate; empty where the area is
 */
public record PaintArea(Paint paint, Surface surface, String wall, Optional<BigDecimal> area, String formula, int coats,
		Optional<BigDecimal> litres) {

	/** Refuses nulls. */
	public PaintArea {
		Objects.requireNonNull(paint);
		Objects.requireNonNull(surface);
		Objects.requireNonNull(wall);
		Objects.requireNonNull(area);
		Objects.requireNonNull(formula);
		Objects.requireNonNull(litres);
	}
}
