// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.figures;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.draw2d.geometry.Rectangle;

/**
 * Parts of the screen that have to be painted again: a few rectangles, none of them much larger than what changed in it. Two
 * far corners do not make everything in between be painted.
 */
public final class Patches {

	/** More rectangles cost more than they save. */
	private static final int MOST = 48;
	/** Two rectangles become one where that adds at most this many pixels. */
	private static final long WASTE = 1_500;

	private final List<Rectangle> parts = new ArrayList<>();

	/** Adds a part; nothing for one that is empty. */
	public void add(Rectangle part) {
		if (part.isEmpty()) {
			return;
		}
		Rectangle grown = part.getCopy();
		int near = nearest(grown, WASTE);
		while (near >= 0) {
			grown.union(parts.remove(near));
			near = nearest(grown, WASTE);
		}
		parts.add(grown);
		if (parts.size() > MOST) {
			Rectangle last = parts.removeLast();
			parts.get(nearest(last, Long.MAX_VALUE)).union(last);
		}
	}

	/** Returns the parts. */
	public List<Rectangle> parts() {
		return List.copyOf(parts);
	}

	/** Returns which part takes in a rectangle at the least waste; -1 for none. */
	private int nearest(Rectangle one, long most) {
		int best = -1;
		long least = most;
		for (int i = 0; i < parts.size(); i++) {
			long waste = area(one.getUnion(parts.get(i))) - area(one) - area(parts.get(i));
			if (waste <= least) {
				best = i;
				least = waste;
			}
		}
		return best;
	}

	private static long area(Rectangle rectangle) {
		return (long) rectangle.width * rectangle.height;
	}
}
