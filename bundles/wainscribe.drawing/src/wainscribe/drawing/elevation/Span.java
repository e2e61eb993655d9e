// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing.elevation;

import java.util.ArrayList;
import java.util.List;

/**
 * A stretch along a wall, millimetres.
 *
 * @param from left end
 * @param to   right end
 */
record Span(double from, double to) {

	/** Returns what is left of this when others are cut away, from left to right. */
	List<Span> without(List<Span> others) {
		List<Span> left = new ArrayList<>(List.of(this));
		for (Span other : others) {
			List<Span> next = new ArrayList<>();
			for (Span span : left) {
				span.cut(other, next);
			}
			left = next;
		}
		return left;
	}

	private void cut(Span other, List<Span> rest) {
		if (other.to <= from || other.from >= to) {
			rest.add(this);
			return;
		}
		if (other.from > from) {
			rest.add(new Span(from, other.from));
		}
		if (other.to < to) {
			rest.add(new Span(other.to, to));
		}
	}
}
