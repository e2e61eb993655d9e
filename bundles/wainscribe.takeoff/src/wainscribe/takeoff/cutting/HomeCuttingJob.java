// SPDX-License-Identifier: EPL-2.0
package wainscribe.takeoff.cutting;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import wainscribe.cutting.BarSource;
import wainscribe.fabrication.CutList;
import wainscribe.fabrication.Piece;
import wainscribe.layout.RoomDesign;
import wainscribe.model.CutBar;
import wainscribe.model.CutPiece;
import wainscribe.model.Home;
import wainscribe.model.Price;
import wainscribe.model.PriceUnit;
import wainscribe.model.StoredOffcut;
import wainscribe.model.length.Length;

/**
 * What is to be cut in a home and from what. Taken down at once: later edits of the home do not reach it, so it may be planned
 * on another thread.
 * <p>
 * Lengths and prices come from the price list, for a profile in its material before one in any; lengths without a price from
 * the briefs ({@code stock=}). Where every priced length is too short for a piece that a length of the brief would hold, and
 * where nothing has a price, the kind is planned by length: the fewest metres are bought.
 */
public final class HomeCuttingJob {

	private final CuttingDecisions decisions;
	private final List<KindJob> kinds;
	private final List<PlannedBar> accepted;

	private HomeCuttingJob(CuttingDecisions decisions, List<KindJob> kinds, List<PlannedBar> accepted) {
		this.decisions = decisions;
		this.kinds = kinds;
		this.accepted = accepted;
	}

	/** Takes down what is still to be cut, with the home's offcuts and accepted plans. */
	public static HomeCuttingJob of(Home home, List<RoomDesign> designs, List<CutList> lists, CuttingDecisions decisions) {
		return taken(home, designs, lists, decisions, List.copyOf(home.getOffcuts()), List.copyOf(home.getCutBars()));
	}

	/** Takes down what rooms need bought by themselves: new lengths only, as if nothing were cut yet. */
	public static HomeCuttingJob anew(Home home, List<RoomDesign> designs, List<CutList> lists) {
		return taken(home, designs, lists, CuttingDecisions.of(home), List.of(), List.of());
	}

	private static HomeCuttingJob taken(Home home, List<RoomDesign> designs, List<CutList> lists, CuttingDecisions decisions,
			List<StoredOffcut> offcuts, List<CutBar> cutBars) {
		Objects.requireNonNull(decisions);
		Map<String, PlannedPiece> all = new LinkedHashMap<>();
		Map<StockKind, Set<Length>> briefs = new LinkedHashMap<>();
		for (int i = 0; i < lists.size(); i++) {
			for (Piece piece : lists.get(i).pieces()) {
				PlannedPiece planned = new PlannedPiece(lists.get(i).room(), piece.label(), piece.longPoint(), piece);
				all.put(planned.key(), planned);
				briefs.computeIfAbsent(StockKind.of(piece), any -> new LinkedHashSet<>()).addAll(designs.get(i).brief().stock());
			}
		}
		Set<String> rooms = lists.stream().map(CutList::room).collect(Collectors.toSet());
		List<CutBar> cut = cutBars.stream().filter(bar -> bar.getPieces().stream().anyMatch(piece -> rooms.contains(piece.getRoom()))).toList();
		List<PlannedBar> accepted = accepted(cut, all, decisions);
		accepted.stream().flatMap(bar -> bar.pieces().stream()).filter(piece -> piece.piece().isPresent())
				.forEach(piece -> all.remove(piece.key()));
		List<KindJob> kinds = new ArrayList<>();
		briefs.forEach((kind, lengths) -> {
			List<PlannedPiece> pieces = all.values().stream().filter(piece -> StockKind.of(piece.cut()).equals(kind)).toList();
			kinds.add(new KindJob(kind, pieces, offers(home, kind, lengths, pieces, decisions.endTrim()), usable(offcuts, kind),
					decisions.endTrim()));
		});
		return new HomeCuttingJob(decisions, List.copyOf(kinds), accepted);
	}

	/** An offcut without a measure or an identity can't be cut from. */
	private static List<StoredOffcut> usable(List<StoredOffcut> offcuts, StockKind kind) {
		return offcuts.stream().filter(offcut -> offcut.getId() != null && offcut.getLength() != null
				&& offcut.getLength().signum() > 0 && kind.profile().equals(offcut.getProfile())
				&& kind.material() == offcut.getMaterial()).toList();
	}

	private static List<StockOffer> offers(Home home, StockKind kind, Set<Length> briefs, List<PlannedPiece> pieces, Length trim) {
		String key = priceKey(home, kind);
		List<StockOffer> priced = home.getPrices().stream()
				.filter(price -> key.equals(price.getItem()) && price.getUnit() == PriceUnit.LENGTH && isWhole(price))
				.map(price -> new StockOffer(price.getPackLength(), price.getAmount())).toList();
		List<StockOffer> unpriced = briefs.stream().filter(length -> length.signum() > 0
				&& priced.stream().noneMatch(offer -> offer.length().equals(length))).map(length -> new StockOffer(length, null)).toList();
		boolean suffices = pieces.stream().noneMatch(piece -> holds(unpriced, piece.length(), trim) && !holds(priced, piece.length(), trim));
		return !priced.isEmpty() && suffices ? priced : Stream.concat(priced.stream(), unpriced.stream()).toList();
	}

	private static boolean holds(List<StockOffer> offers, Length piece, Length trim) {
		return offers.stream().anyMatch(offer -> !piece.isMoreThan(offer.length().minus(trim)));
	}

	private static boolean isWhole(Price price) {
		return price.getAmount() != null && price.getAmount().signum() >= 0 && price.getPackLength() != null
				&& price.getPackLength().signum() > 0;
	}

	/**
	 * Returns under what the price list has a kind: a price for the profile in its material goes before one for the profile in
	 * any.
	 */
	public static String priceKey(Home home, StockKind kind) {
		String inMaterial = kind.profile() + ' ' + kind.material().getLiteral();
		return home.getPrices().stream().anyMatch(price -> inMaterial.equals(price.getItem()) && price.getAmount() != null)
				? inMaterial : kind.profile();
	}

	private static List<PlannedBar> accepted(List<CutBar> bars, Map<String, PlannedPiece> all, CuttingDecisions decisions) {
		List<PlannedBar> accepted = new ArrayList<>();
		for (CutBar bar : bars) {
			if (bar.getProfile() == null || bar.getMaterial() == null || bar.getLength() == null) {
				continue;
			}
			StockKind kind = new StockKind(bar.getProfile(), bar.getMaterial());
			List<PlannedPiece> pieces = bar.getPieces().stream().filter(piece -> piece.getLabel() != null && piece.getLength() != null)
					.map(piece -> found(piece, kind, all)).toList();
			Length used = pieces.stream().map(PlannedPiece::length).reduce(decisions.endTrim(), Length::plus)
					.plus(decisions.kerf().times(pieces.size()));
			boolean offcut = bar.getName() != null;
			accepted.add(new PlannedBar(accepted.size() + 1, offcut ? BarSource.OFFCUT : BarSource.STOCK,
					offcut ? bar.getName() : "", "", kind, bar.getLength(), bar.getPrice(), pieces, //$NON-NLS-1$ //$NON-NLS-2$
					bar.getLength().minus(used).max(Length.ZERO)));
		}
		return List.copyOf(accepted);
	}

	/** A cut piece serves the design only while the design has it in this length from this kind. */
	private static PlannedPiece found(CutPiece cut, StockKind kind, Map<String, PlannedPiece> all) {
		String room = cut.getRoom() == null ? "" : cut.getRoom(); //$NON-NLS-1$
		PlannedPiece wanted = all.get(new PlannedPiece(room, cut.getLabel(), cut.getLength(), null).key());
		boolean serves = wanted != null && wanted.length().equals(cut.getLength()) && StockKind.of(wanted.cut()).equals(kind);
		return new PlannedPiece(room, cut.getLabel(), cut.getLength(), serves ? wanted.cut() : null);
	}

	CuttingDecisions decisions() {
		return decisions;
	}

	List<KindJob> kinds() {
		return kinds;
	}

	List<PlannedBar> accepted() {
		return accepted;
	}

	/** Returns the lengths of a kind that can be bought; empty where none is known. */
	public List<StockOffer> offers(StockKind kind) {
		return kinds.stream().filter(job -> job.kind().equals(kind)).findFirst().map(KindJob::offers).orElse(List.of());
	}

	/** Returns the kinds in the order of their first piece. */
	public List<StockKind> stockKinds() {
		return kinds.stream().map(KindJob::kind).toList();
	}

	/** Returns the cost of nothing, for plans that have not begun. */
	static BigDecimal nothing() {
		return BigDecimal.ZERO.setScale(2);
	}
}
