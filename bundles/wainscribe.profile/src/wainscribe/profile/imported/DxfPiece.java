// SPDX-License-Identifier: EPL-2.0
package wainscribe.profile.imported;

import java.util.List;

import wainscribe.profile.section.SectionPoint;
import wainscribe.profile.section.Segment;

/** A connected piece of the outline and the entity it came from. */
record DxfPiece(int row, String entity, List<Segment> segments) {

	SectionPoint start() {
		return segments.getFirst().start();
	}

	SectionPoint end() {
		return segments.getLast().end();
	}

	DxfPiece reversed() {
		return new DxfPiece(row, entity, segments.reversed().stream().map(Segment::reversed).toList());
	}
}
