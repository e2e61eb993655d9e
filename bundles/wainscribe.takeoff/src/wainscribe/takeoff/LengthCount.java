// SPDX-License-Identifier: EPL-2.0
package wainscribe.takeoff;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import wainscribe.model.length.Length;

/**
 * Counts the whole lengths that pieces take: longest piece first, each into the first length that still holds it. It is an
 * estimate: always enough, sometimes more than a cutting plan needs.
 */
final class LengthCount {

	private LengthCount() {
	}

	/**
	 * Counts lengths.
	 *
	 * @param pieces lengths to cut; longer ones than the stock are taken as whole lengths and a rest, to be joined
	 * @param stock  the stock length, above zero
	 * @param kerf   what each cut between two pieces takes
	 * @return the number of lengths
	 */
	static int of(List<Length> pieces, Length stock, Length kerf) {
		List<Length> sorted = new ArrayList<>();
		pieces.forEach(piece -> addSplit(piece, stock, sorted));
		sorted.sort(Comparator.reverseOrder());
		List<Length> left = new ArrayList<>();
		for (Length piece : sorted) {
			place(piece, stock, kerf, left);
		}
		return left.size();
	}

	private static void addSplit(Length piece, Length stock, List<Length> sorted) {
		Length rest = piece;
		while (rest.isMoreThan(stock)) {
			sorted.add(stock);
			rest = rest.minus(stock);
		}
		sorted.add(rest);
	}

	private static void place(Length piece, Length stock, Length kerf, List<Length> left) {
		for (int i = 0; i < left.size(); i++) {
			Length rest = left.get(i).minus(kerf).minus(piece);
			if (rest.signum() >= 0) {
				left.set(i, rest);
				return;
			}
		}
		left.add(stock.minus(piece));
	}
}
