// SPDX-License-Identifier: EPL-2.0
package wainscribe.report.view;

import java.util.List;

/**
 * One room.
 *
 * @param id         anchor in the page, unique
 * @param name       of the room
 * @param measured   what was measured
 * @param proposed   what is proposed
 * @param open       stretches that stay plain against the wish
 * @param elevations its walls in walking order
 * @param pieces     pieces to cut, equal ones together
 * @param pieceCount number of all pieces
 * @param removals   moulding that comes off first
 * @param spacers    blocks and sticks to cut for the set-out
 * @param blocks     corner and plinth blocks that runs stop at
 * @param quantities what it takes, bought for itself
 * @param total      sum of the priced quantities
 * @param paints     paints that hold in it
 * @param findings   its open findings
 */
public record RoomView(String id, String name, List<Fact> measured, List<Fact> proposed, List<String> open,
		List<ElevationView> elevations, List<PieceRow> pieces, int pieceCount,
		List<String> removals, List<String> spacers, List<String> blocks, List<QuantityRow> quantities,
		String total, List<PaintView> paints, List<FindingView> findings) {

	/** Copies the lists. */
	public RoomView {
		measured = List.copyOf(measured);
		proposed = List.copyOf(proposed);
		open = List.copyOf(open);
		elevations = List.copyOf(elevations);
		pieces = List.copyOf(pieces);
		removals = List.copyOf(removals);
		spacers = List.copyOf(spacers);
		blocks = List.copyOf(blocks);
		quantities = List.copyOf(quantities);
		paints = List.copyOf(paints);
		findings = List.copyOf(findings);
	}
}
