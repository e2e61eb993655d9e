// SPDX-License-Identifier: EPL-2.0
package wainscribe.takeoff.cutting;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

import wainscribe.cutting.Offcut;
import wainscribe.cutting.PieceDemand;
import wainscribe.cutting.StockLength;
import wainscribe.model.StoredOffcut;
import wainscribe.model.length.Length;

/**
 * What has to be cut of one kind and from what.
 *
 * @param kind    what it is of
 * @param pieces  still to be cut
 * @param offers  lengths that can be bought; empty where none is known
 * @param offcuts leftovers of the home
 * @param trim    what comes off every bar
 */
record KindJob(StockKind kind, List<PlannedPiece> pieces, List<StockOffer> offers, List<StoredOffcut> offcuts, Length trim) {

	private static final int TO_METRES = 3;

	KindJob {
		pieces = parted(pieces, offers, trim);
		offers = List.copyOf(offers);
		offcuts = List.copyOf(offcuts);
	}

	/** Tells whether every length has a price; else the plan buys the least length. */
	boolean isPriced() {
		return offers.stream().allMatch(offer -> offer.price() != null);
	}

	List<PieceDemand> demands() {
		return pieces.stream().map(piece -> new PieceDemand(piece.key(), kind.key(), piece.length(), 1)).toList();
	}

	List<StockLength> stock() {
		return offers.stream().map(offer -> new StockLength(kind.key(), offer.length(),
				isPriced() ? offer.price() : offer.length().toMillimetres().movePointLeft(TO_METRES), OptionalInt.empty())).toList();
	}

	List<Offcut> leftovers() {
		return offcuts.stream().map(offcut -> new Offcut(offcut.getId(), kind.key(), offcut.getLength())).toList();
	}

	/** A run longer than every length sold is joined from whole lengths and a rest; a side of a frame or a strip never is. */
	private static List<PlannedPiece> parted(List<PlannedPiece> pieces, List<StockOffer> offers, Length trim) {
		Length longest = offers.stream().map(StockOffer::length).reduce(Length.ZERO, Length::max).minus(trim);
		List<PlannedPiece> parted = new ArrayList<>();
		for (PlannedPiece piece : pieces) {
			boolean isRun = piece.cut() != null && !piece.cut().kind().isSingle();
			if (longest.signum() > 0 && isRun && piece.length().isMoreThan(longest)) {
				Length rest = piece.length();
				for (int part = 1; rest.signum() > 0; part++) {
					Length length = rest.min(longest);
					parted.add(new PlannedPiece(piece.room(), piece.label() + " part " + part, length, piece.cut())); //$NON-NLS-1$
					rest = rest.minus(length);
				}
			} else {
				parted.add(piece);
			}
		}
		return List.copyOf(parted);
	}
}
