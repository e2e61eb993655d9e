// SPDX-License-Identifier: EPL-2.0
package wainscribe.report.view;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

import wainscribe.fabrication.Piece;
import wainscribe.model.Home;
import wainscribe.model.length.Length;
import wainscribe.model.length.LengthUnit;
import wainscribe.takeoff.cutting.BuyLine;
import wainscribe.takeoff.cutting.HomePlan;
import wainscribe.takeoff.cutting.PlannedBar;
import wainscribe.takeoff.cutting.PlannedPiece;
import wainscribe.takeoff.cutting.StockKind;

/** Turns cutting plans into what pages and sheets show. Immutable. */
public final class CuttingViews {

	private static final int CENTS = 2;

	private final UnaryOperator<String> profileName;

	/**
	 * Creates the service.
	 *
	 * @param profileName finds the name of a profile by its id
	 */
	public CuttingViews(UnaryOperator<String> profileName) {
		this.profileName = Objects.requireNonNull(profileName);
	}

	/** Returns what pages show of a plan. */
	public CuttingView of(Home home, HomePlan plan) {
		Wording wording = new Wording(home.getUnits() == null ? LengthUnit.MILLIMETRE : home.getUnits());
		String currency = Wording.text(home.getCurrency());
		Length longest = Stream.concat(plan.bars().stream(), plan.accepted().stream()).map(PlannedBar::length)
				.reduce(Length.ofMillimetres(1), Length::max);
		return new CuttingView(facts(plan, wording, currency), notes(plan, wording),
				plan.buys().stream().map(line -> buy(line, wording, currency)).toList(),
				plan.bars().stream().map(bar -> bar(bar, plan, wording, longest)).toList(),
				plan.accepted().stream().map(bar -> bar(bar, plan, wording, longest)).toList());
	}

	private static List<Fact> facts(HomePlan plan, Wording wording, String currency) {
		List<Fact> facts = new ArrayList<>();
		facts.add(new Fact("Bars", plan.bars().size() + (plan.accepted().isEmpty() ? ""
				: ", besides " + plan.accepted().size() + " of accepted plans")));
		facts.add(new Fact("Cost", money(plan.cost(), currency) + ", " + proof(plan, currency)));
		facts.add(new Fact("Saw cut", wording.length(plan.decisions().kerf())));
		if (plan.decisions().endTrim().signum() > 0) {
			facts.add(new Fact("End trim", wording.length(plan.decisions().endTrim()) + " off every bar first"));
		}
		facts.add(new Fact("Worth keeping", wording.length(plan.decisions().shortestOffcut()) + " and longer"));
		return facts;
	}

	private static String proof(HomePlan plan, String currency) {
		if (plan.optimal()) {
			return "proved: no plan costs less, and none of this cost leaves a longer piece";
		}
		return plan.isCostProved() ? "proved: no plan costs less"
				: "the best found; no plan can cost less than " + money(plan.lowerBound().setScale(CENTS, RoundingMode.FLOOR), currency);
	}

	private List<String> notes(HomePlan plan, Wording wording) {
		List<String> notes = new ArrayList<>();
		for (StockKind kind : plan.unpriced()) {
			notes.add("No price for every length of " + name(kind) + ": planned by length, the fewest metres, and not in the cost.");
		}
		for (PlannedPiece piece : plan.unplaced()) {
			notes.add("Missing: no length is known that holds " + called(piece) + ", " + wording.length(piece.length()) + ".");
		}
		return notes;
	}

	private Fact buy(BuyLine line, Wording wording, String currency) {
		return new Fact(line.count() + " \u00d7 " + wording.length(line.length()), name(line.kind())
				+ (line.price() == null ? ", no price" : ", " + money(line.price(), currency) + " each, " + money(line.total(), currency)));
	}

	private BarView bar(PlannedBar bar, HomePlan plan, Wording wording, Length longest) {
		String left = wording.length(bar.remainder());
		return new BarView(bar.number(), wording.length(bar.length()) + " " + name(bar.kind()),
				bar.isBought() ? "new length" : "offcut " + bar.label(),
				plan.isOffcut(bar.remainder()) ? "left " + left + ", keep" : "left " + left, share(bar.length(), longest),
				share(plan.decisions().endTrim(), longest), share(plan.decisions().kerf(), longest), percent(bar.length(), longest),
				bar.pieces().stream().map(piece -> piece(piece, bar, wording, longest)).toList());
	}

	private CutView piece(PlannedPiece piece, PlannedBar bar, Wording wording, Length longest) {
		String gone = piece.piece().isEmpty() ? "The design no longer has this piece." : "";
		return new CutView(piece.label(), piece.room(), wording.mark(piece.length()),
				piece.piece().map(cut -> PieceRows.end(cut.start())).orElse(""),
				piece.piece().map(cut -> PieceRows.end(cut.end())).orElse(""), name(bar.kind()),
				piece.piece().map(Piece::where).orElse(""), piece.piece().map(cut -> String.join("; ", cut.notes())).orElse(gone),
				share(piece.length(), longest), percent(piece.length(), bar.length()));
	}

	private String name(StockKind kind) {
		return profileName.apply(kind.profile()) + ", " + Wording.words(kind.material());
	}

	private static String called(PlannedPiece piece) {
		return (piece.room() + ' ' + piece.label()).strip();
	}

	private static double share(Length part, Length whole) {
		return part.approximateMillimetres() / whole.approximateMillimetres();
	}

	private static String percent(Length part, Length whole) {
		return String.format(Locale.ROOT, "%.3f", 100 * share(part, whole));
	}

	private static String money(BigDecimal amount, String currency) {
		String text = amount.setScale(CENTS, RoundingMode.HALF_UP).toPlainString();
		return currency.isEmpty() ? text : text + " " + currency;
	}
}
