// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.measure;

import org.eclipse.osgi.util.NLS;

import wainscribe.layout.FrameOutline;
import wainscribe.layout.Member;
import wainscribe.layout.StripOutline;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.rules.Subject;

/**
 * One straight piece of moulding as it covers the wall: a side of a frame, a batten or board, or a stretch of the rail.
 *
 * @param wall      the wall
 * @param member    the frame whose side it is, or the strip that it is; null for the rail
 * @param shape     the wall it covers
 * @param thickness its projection
 */
public record Strip(Wall wall, Member member, Quadrilateral shape, Length thickness) {

	/** Returns what a finding on the moulding itself is about. */
	public Subject subject() {
		return member == null ? Subject.rail(wall) : Subject.of(wall, member);
	}

	/** Returns how a message names what it belongs to: the rail, or a frame or strip with its id. */
	public String name() {
		return switch (member) {
			case null -> Messages.Strip_Rail;
			case FrameOutline frame -> NLS.bind(Messages.Strip_Frame, frame.id());
			case StripOutline strip -> NLS.bind(switch (strip.kind()) {
				case BATTEN -> Messages.Strip_Batten;
				case STILE -> Messages.Strip_Stile;
				case RAIL -> Messages.Strip_Board;
			}, strip.id());
		};
	}
}
