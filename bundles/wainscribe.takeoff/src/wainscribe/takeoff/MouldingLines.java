// SPDX-License-Identifier: EPL-2.0
package wainscribe.takeoff;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.eclipse.osgi.util.NLS;

import wainscribe.fabrication.Piece;
import wainscribe.fabrication.PieceKind;
import wainscribe.model.Material;
import wainscribe.model.Price;
import wainscribe.model.PriceUnit;
import wainscribe.model.length.Length;
import wainscribe.model.length.LengthFormat;
import wainscribe.profile.ProfileCatalogue;

/** Mouldings to buy: whole lengths where it is known how long they are sold, else metres with waste; and a spare of each. */
record MouldingLines(ProfileCatalogue profiles, PriceBook prices, Amounts amounts) {

	private static final int MILLIMETRES = 3;

	/** What can be bought: how long, and for how much; the price is null where only the length is known. */
	private record Offer(Length length, BigDecimal price) {
	}

	/** An offer and how many lengths of it the pieces take. */
	private record Choice(Offer offer, int count) {
		BigDecimal price() {
			return offer.price() == null ? null : offer.price().multiply(BigDecimal.valueOf(count));
		}

		Length bought() {
			return offer.length().times(count);
		}
	}

	/** What is cut from the same stock: one profile in one material. */
	private record Kind(String profile, Material material) {
	}

	List<TakeoffLine> of(List<RoomMeasure> rooms) {
		Map<Kind, List<Piece>> groups = new LinkedHashMap<>();
		Map<Kind, List<Length>> stock = new LinkedHashMap<>();
		for (RoomMeasure room : rooms) {
			room.cutList().byProfile().forEach((profile, pieces) -> {
				Kind kind = new Kind(profile, pieces.getFirst().material());
				groups.computeIfAbsent(kind, any -> new ArrayList<>()).addAll(pieces);
				stock.computeIfAbsent(kind, any -> new ArrayList<>()).addAll(room.design().brief().stock());
			});
		}
		List<TakeoffLine> lines = new ArrayList<>();
		groups.forEach((kind, pieces) -> addLines(kind, pieces, stock.get(kind), lines));
		return lines;
	}

	private void addLines(Kind kind, List<Piece> pieces, List<Length> stock, List<TakeoffLine> lines) {
		String item = NLS.bind(Messages.MouldingLines_Item, name(kind.profile(), pieces.getFirst()), kind.material().getLiteral());
		BigDecimal metres = pieces.stream().map(piece -> Amounts.metres(piece.longPoint())).reduce(BigDecimal.ZERO, BigDecimal::add)
				.setScale(MILLIMETRES, RoundingMode.HALF_UP);
		String key = priceKey(kind);
		Optional<Choice> choice = choose(pieces, offers(key, stock));
		if (choice.isPresent()) {
			lines.add(inLengths(key, item, pieces, metres, choice.get()));
			lines.add(spare(key, item, choice.get().offer()));
		} else {
			lines.add(inMetres(key, item, pieces, metres));
			lines.add(spare(key, item, null));
		}
	}

	/** A price for the profile in its material goes before one for the profile in any. */
	private String priceKey(Kind kind) {
		String inMaterial = kind.profile() + ' ' + kind.material().getLiteral();
		return prices.has(inMaterial) ? inMaterial : kind.profile();
	}

	private String name(String key, Piece piece) {
		return profiles.find(key).map(profile -> profile.name())
				.orElseGet(() -> NLS.bind(Messages.MouldingLines_Unnamed,
						new Object[] { piece.kind().word(), LengthFormat.asShown(piece.section().face(), amounts.unit()),
								LengthFormat.asShown(piece.section().thickness(), amounts.unit()) }));
	}

	private List<Offer> offers(String key, List<Length> stock) {
		List<Offer> offers = new ArrayList<>();
		for (Price price : prices.of(key, PriceUnit.LENGTH)) {
			if (price.getPackLength() != null && price.getPackLength().signum() > 0) {
				offers.add(new Offer(price.getPackLength(), price.getAmount()));
			}
		}
		if (offers.isEmpty()) {
			stock.stream().distinct().filter(length -> length.signum() > 0).forEach(length -> offers.add(new Offer(length, null)));
		}
		return offers;
	}

	/** The cheapest length, where prices are missing the one of which least is bought; a frame side is never joined. */
	private static Optional<Choice> choose(List<Piece> pieces, List<Offer> offers) {
		List<Length> lengths = pieces.stream().map(Piece::longPoint).toList();
		Length longestSide = pieces.stream().filter(piece -> piece.kind() == PieceKind.FRAME).map(Piece::longPoint)
				.max(Comparator.naturalOrder()).orElse(Length.ZERO);
		return offers.stream().filter(offer -> !offer.length().isLessThan(longestSide))
				.map(offer -> new Choice(offer, LengthCount.of(lengths, offer.length(), Practice.KERF)))
				.min(Comparator.comparing(Choice::price, Comparator.nullsLast(Comparator.naturalOrder()))
						.thenComparing(Choice::bought).thenComparing(Choice::count));
	}

	private TakeoffLine inLengths(String key, String item, List<Piece> pieces, BigDecimal metres, Choice choice) {
		Length stock = choice.offer().length();
		String formula = NLS.bind(Messages.MouldingLines_Lengths,
				new Object[] { count(pieces), amounts.metresShown(metres), LengthFormat.asShown(stock, amounts.unit()),
						LengthFormat.asShown(Practice.KERF, amounts.unit()), choice.count(),
						amounts.metresShown(Amounts.metres(choice.bought())) });
		long joined = pieces.stream().filter(piece -> piece.longPoint().isMoreThan(stock)).count();
		if (joined > 0) {
			formula = formula + NLS.bind(Messages.MouldingLines_Joined, joined);
		}
		TakeoffLine line = new TakeoffLine(key, Messages.Group_Mouldings, item, formula, Messages.Source_CommonPractice,
				metres, "m", List.of(), null); //$NON-NLS-1$
		return PriceBook.priced(line, List.of(packs(choice.count(), choice.offer())), choice.price());
	}

	private TakeoffLine inMetres(String key, String item, List<Piece> pieces, BigDecimal metres) {
		boolean frames = pieces.stream().anyMatch(piece -> piece.kind() == PieceKind.FRAME);
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

	private TakeoffLine spare(String key, String item, Offer offer) {
		TakeoffLine line = new TakeoffLine(key, Messages.Group_Mouldings, NLS.bind(Messages.MouldingLines_Spare, item),
				Messages.MouldingLines_SpareFormula, Messages.Source_TrimSpare, BigDecimal.ONE, Messages.Unit_Length, List.of(), null);
		return offer == null ? line : PriceBook.priced(line, List.of(packs(1, offer)), offer.price());
	}

	private static PackCount packs(int count, Offer offer) {
		return new PackCount(count, Amounts.metres(offer.length()), "m", offer.price()); //$NON-NLS-1$
	}
}
