// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile.figures;

import java.util.List;
import java.util.Objects;

import wainscribe.drawing.Point;

/**
 * What the desk shows below everything that can be taken hold of, in pixels.
 *
 * @param solid    outline of the last sound section
 * @param face     chords of each segment of the face as drawn now
 * @param back     chords of each segment of the back
 * @param gap      from where an open outline ends to where it begins; empty when it is closed
 * @param fine     distance of the grid's fine marks
 * @param numbered distance of the grid's numbered marks
 */
public record DeskPicture(List<Point> solid, List<List<Point>> face, List<List<Point>> back, List<Point> gap, double fine,
		double numbered) {

	/** An empty desk. */
	public static final DeskPicture EMPTY = new DeskPicture(List.of(), List.of(), List.of(), List.of(), 0, 0);

	/** Copies the lists. */
	public DeskPicture {
		solid = List.copyOf(solid);
		face = List.copyOf(face);
		back = List.copyOf(back);
		gap = List.copyOf(Objects.requireNonNull(gap));
	}
}
