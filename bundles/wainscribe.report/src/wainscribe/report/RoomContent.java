// SPDX-License-Identifier: EPL-2.0
package wainscribe.report;

import java.util.List;
import java.util.Objects;

import wainscribe.fabrication.CutList;
import wainscribe.layout.RoomDesign;
import wainscribe.rules.Finding;

/**
 * What a pack says about one room.
 *
 * @param design   the room as laid out
 * @param findings open findings, the heaviest first
 * @param cutList  its pieces
 */
public record RoomContent(RoomDesign design, List<Finding> findings, CutList cutList) {

	/** Refuses nulls and copies the list. */
	public RoomContent {
		Objects.requireNonNull(design);
		Objects.requireNonNull(cutList);
		findings = List.copyOf(findings);
	}

	/** Returns the name of the room; empty if it has none. */
	public String name() {
		return design.room().getName() == null ? "" : design.room().getName(); //$NON-NLS-1$
	}
}
