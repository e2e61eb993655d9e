// SPDX-License-Identifier: EPL-2.0
package wainscribe.cutting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import wainscribe.model.length.Length;

/**
 * Pieces of one length, which the solver does not tell apart.
 *
 * @param length their length
 * @param pieces the demands, in the order of their labels
 */
record ItemGroup(Length length, List<PieceDemand> pieces) {

	/** Longest first, then by label. */
	static final Comparator<PieceDemand> ORDER = Comparator.comparing(PieceDemand::length).reversed().thenComparing(PieceDemand::label);

	ItemGroup {
		pieces = pieces.stream().sorted(ORDER).toList();
	}

	int quantity() {
		return pieces.stream().mapToInt(PieceDemand::quantity).reduce(0, Math::addExact);
	}

	/** Hands out the labels one by one. */
	Labels labels() {
		return new Labels(pieces);
	}

	/** Returns the demands of the last so many pieces, which got no bar. */
	List<PieceDemand> last(int count) {
		List<PieceDemand> result = new ArrayList<>();
		int missing = count;
		for (int i = pieces.size() - 1; i >= 0 && missing > 0; i--) {
			PieceDemand piece = pieces.get(i);
			int some = Math.min(missing, piece.quantity());
			result.add(0, new PieceDemand(piece.label(), piece.profile(), piece.length(), some));
			missing -= some;
		}
		return result;
	}

	/** Labels not yet handed out. */
	static final class Labels {

		private final List<PieceDemand> pieces;
		private int row;
		private int used;

		private Labels(List<PieceDemand> pieces) {
			this.pieces = pieces;
		}

		String next() {
			while (used == pieces.get(row).quantity()) {
				row++;
				used = 0;
			}
			used++;
			return pieces.get(row).label();
		}
	}
}
