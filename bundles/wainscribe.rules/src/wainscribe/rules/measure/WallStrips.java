// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.measure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import wainscribe.layout.RoomDesign;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.model.outline.Outline;

/** All mouldings that a design puts on one wall, measured from the outlines alone. */
public final class WallStrips {

	private final List<Strip> strips;

	private WallStrips(List<Strip> strips) {
		this.strips = List.copyOf(strips);
	}

	/**
	 * A strip and how far it keeps from something.
	 *
	 * @param strip the strip
	 * @param gap   the greatest margin the thing can grow by on all sides before they meet; zero where they touch
	 */
	public record Nearest(Strip strip, Length gap) {
	}

	/** Returns the sides of all frames, the strips and the stretches of the rail on a wall. */
	public static WallStrips of(RoomDesign design, Wall wall) {
		List<Strip> found = new ArrayList<>();
		design.layout().of(wall).ifPresent(on -> on.frames()
				.forEach(frame -> found.addAll(FrameStrips.of(wall, frame, design.layout().profile()))));
		design.layout().of(wall).ifPresent(on -> on.strips()
				.forEach(strip -> found.add(FrameStrips.of(wall, strip, design.layout().profile()))));
		found.addAll(RailStretches.of(design, wall));
		return new WallStrips(found);
	}

	/** Returns all strips, the rail last. */
	public List<Strip> all() {
		return strips;
	}

	/** Returns the stretches of the rail from left to right. */
	public List<Strip> rail() {
		return strips.stream().filter(strip -> strip.member() == null).toList();
	}

	/** Tells whether the wall takes no moulding. */
	public boolean isEmpty() {
		return strips.isEmpty();
	}

	/** Returns the strip nearest to an outline; empty on a bare wall. */
	public Optional<Nearest> nearest(Outline outline) {
		return strips.stream().map(strip -> new Nearest(strip, strip.shape().gapTo(outline)))
				.min(Comparator.comparing(Nearest::gap));
	}

	/** Returns the first strip that runs into an outline; touching edges do not count. */
	public Optional<Strip> crossing(Outline outline) {
		return strips.stream().filter(strip -> strip.shape().overlaps(outline)).findFirst();
	}
}
