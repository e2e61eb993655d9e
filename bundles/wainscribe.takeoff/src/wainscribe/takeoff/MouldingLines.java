// SPDX-License-Identifier: EPL-2.0
package wainscribe.takeoff;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

import org.eclipse.osgi.util.NLS;

import wainscribe.fabrication.Piece;
import wainscribe.model.Home;
import wainscribe.model.PriceUnit;
import wainscribe.model.length.Length;
import wainscribe.model.length.LengthFormat;
import wainscribe.profile.ProfileCatalogue;
import wainscribe.takeoff.cutting.BuyLine;
import wainscribe.takeoff.cutting.HomeCuttingJob;
import wainscribe.takeoff.cutting.PlannedBar;
import wainscribe.takeoff.cutting.StockKind;
import wainscribe.takeoff.cutting.StockOffer;

/**
 * Mouldings to buy: the lengths of the cutting plan where it is known how long they are sold, else metres with waste; and a
 * spare of each.
 */
record MouldingLines(ProfileCatalogue profiles, Home home, PriceBook prices, Amounts amounts) {

	private static final int MILLIMETRES = 3;

	List<TakeoffLine> of(List<RoomMeasure> rooms, CutStock stock) {
		Map<StockKind, List<Piece>> groups = new LinkedHashMap<>();
		rooms.forEach(room -> room.cutList().pieces()
				.forEach(piece -> groups.computeIfAbsent(StockKind.of(piece), any -> new ArrayList<>()).add(piece)));
		List<TakeoffLine> lines = new ArrayList<>();
		groups.forEach((kind, pieces) -> addLines(kind, pieces, stock, lines));
		return lines;
	}

	private void addLines(StockKind kind, List<Piece> pieces, CutStock stock, List<TakeoffLine> lines) {
		String item = NLS.bind(Messages.MouldingLines_Item, name(kind.profile(), pieces.getFirst()), kind.material().getLiteral());
		BigDecimal metres = pieces.stream().map(piece -> Amounts.metres(piece.longPoint())).reduce(BigDecimal.ZERO, BigDecimal::add)
				.setScale(MILLIMETRES, RoundingMode.HALF_UP);
		String key = HomeCuttingJob.priceKey(home, kind);
		List<StockOffer> offers = stock.job().offers(kind);
		boolean inLengths = !offers.isEmpty() || !stock.plan().barsOf(kind).isEmpty();
		lines.add(inLengths ? inLengths(key, item, kind, pieces, metres, stock) : inMetres(key, item, pieces, metres));
		lines.add(spare(key, item, offers, pieces));
	}

	private String name(String key, Piece piece) {
		return profiles.find(key).map(profile -> profile.name())
				.orElseGet(() -> NLS.bind(Messages.MouldingLines_Unnamed,
						new Object[] { piece.kind().word(), LengthFormat.asShown(piece.section().face(), amounts.unit()),
								LengthFormat.asShown(piece.section().thickness(), amounts.unit()) }));
	}

	private TakeoffLine inLengths(String key, String item, StockKind kind, List<Piece> pieces, BigDecimal metres, CutStock stock) {
		List<PlannedBar> bars = stock.plan().barsOf(kind);
		List<BuyLine> buys = BuyLine.of(bars).stream().sorted(Comparator.comparing(BuyLine::length)).toList();
		Length bought = buys.stream().map(buy -> buy.length().times(buy.count())).reduce(Length.ZERO, Length::plus);
		String lengths = buys.isEmpty() ? Messages.MouldingLines_NoLength
				: buys.stream().map(buy -> buy.count() + " x " + LengthFormat.asShown(buy.length(), amounts.unit())) //$NON-NLS-1$
						.collect(Collectors.joining(" + ")); //$NON-NLS-1$
		String formula = NLS.bind(Messages.MouldingLines_Lengths,
				new Object[] { count(pieces), amounts.metresShown(metres),
						LengthFormat.asShown(stock.plan().decisions().kerf(), amounts.unit()), lengths,
						amounts.metresShown(Amounts.metres(bought)) })
				+ remarks(kind, pieces, bars, stock);
		TakeoffLine line = new TakeoffLine(key, Messages.Group_Mouldings, item, formula, Messages.Source_CommonPractice, metres, "m", //$NON-NLS-1$
				List.of(), null);
		boolean priced = buys.stream().allMatch(buy -> buy.price() != null);
		return PriceBook.priced(line, buys.stream().map(buy -> packs(buy.count(), new StockOffer(buy.length(), buy.price()))).toList(),
				priced ? buys.stream().map(BuyLine::total).reduce(BigDecimal.ZERO, BigDecimal::add) : null);
	}

	private static String remarks(StockKind kind, List<Piece> pieces, List<PlannedBar> bars, CutStock stock) {
		StringBuilder remarks = new StringBuilder();
		long offcuts = bars.stream().filter(bar -> !bar.isBought()).count();
		if (offcuts > 0) {
			remarks.append(NLS.bind(Messages.MouldingLines_Offcuts, offcuts));
		}
		Length longest = stock.job().offers(kind).stream().map(StockOffer::length).reduce(Length.ZERO, Length::max);
		long joined = pieces.stream().filter(piece -> !piece.kind().isSingle() && piece.longPoint().isMoreThan(longest)).count();
		if (joined > 0) {
			remarks.append(NLS.bind(Messages.MouldingLines_Joined, joined));
		}
		long unplaced = stock.plan().unplaced().stream().filter(piece -> StockKind.of(piece.cut()).equals(kind)).count();
		if (unplaced > 0) {
			remarks.append(NLS.bind(Messages.MouldingLines_Unplaced, unplaced));
		}
		return remarks.toString();
	}

	private TakeoffLine inMetres(String key, String item, List<Piece> pieces, BigDecimal metres) {
		boolean frames = pieces.stream().anyMatch(piece -> piece.kind().isSingle());
		BigDecimal waste = frames ? Practice.FRAME_WASTE : Practice.RUN_WASTE;
		BigDecimal need = metres.multiply(BigDecimal.ONE.add(waste)).setScale(MILLIMETRES, RoundingMode.HALF_UP);
		String formula = NLS.bind(Messages.MouldingLines_Metres, new Object[] { count(pieces), amounts.metresShown(metres),
				Amounts.plain(waste.movePointRight(2)), amounts.metresShown(need) });
		TakeoffLine line = new TakeoffLine(key, Messages.Group_Mouldings, item, formula, Messages.Source_TrimWaste, need, "m", //$NON-NLS-1$
				List.of(), null);
		return prices.bought(line, need, PriceUnit.METRE, "m"); //$NON-NLS-1$
	}

	private static String count(List<Piece> pieces) {
		return pieces.size() == 1 ? Messages.MouldingLines_OnePiece : NLS.bind(Messages.MouldingLines_Pieces, pieces.size());
	}

	/** The cheapest length that holds every piece can replace any of them. */
	private TakeoffLine spare(String key, String item, List<StockOffer> offers, List<Piece> pieces) {
		TakeoffLine line = new TakeoffLine(key, Messages.Group_Mouldings, NLS.bind(Messages.MouldingLines_Spare, item),
				Messages.MouldingLines_SpareFormula, Messages.Source_TrimSpare, BigDecimal.ONE, Messages.Unit_Length, List.of(), null);
		Length longest = pieces.stream().map(Piece::longPoint).max(Comparator.naturalOrder()).orElse(Length.ZERO);
		Comparator<StockOffer> cheapest = Comparator.comparing(StockOffer::price, Comparator.nullsLast(Comparator.naturalOrder()));
		return offers.stream().filter(offer -> !offer.length().isLessThan(longest)).min(cheapest.thenComparing(StockOffer::length))
				.or(() -> offers.stream().max(Comparator.comparing(StockOffer::length)))
				.map(offer -> PriceBook.priced(line, List.of(packs(1, offer)), offer.price())).orElse(line);
	}

	private static PackCount packs(int count, StockOffer offer) {
		return new PackCount(count, Amounts.metres(offer.length()), "m", offer.price()); //$NON-NLS-1$
	}
}
