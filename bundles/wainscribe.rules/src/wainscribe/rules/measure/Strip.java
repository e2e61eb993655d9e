// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.measure;

import java.util.Optional;

import org.eclipse.osgi.util.NLS;

import wainscribe.layout.FrameOutline;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.rules.Subject;

/**
 * One straight piece of moulding as it covers the wall: a side of a frame, or a stretch of the rail.
 *
 * @param wall      the wall
 * @param frame     the frame whose side it is; null for the rail
 * @param shape     the wall it covers
 * @param thickness its projection
 */
public record Strip(Wall wall, FrameOutline frame, Quadrilateral shape, Length thickness) {

	/** Returns the frame whose side it is; empty for the rail. */
	public Optional<FrameOutline> ofFrame() {
		return Optional.ofNullable(frame);
	}

	/** Returns what a finding on the moulding itself is about. */
	public Subject subject() {
		return frame == null ? Subject.rail(wall) : Subject.of(wall, frame);
	}

	/** Returns how a message names what it belongs to: the rail, or a frame with its id. */
	public String name() {
		return frame == null ? Messages.Strip_Rail : NLS.bind(Messages.Strip_Frame, frame.id());
	}
}
