// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.cutting;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

import org.eclipse.osgi.util.NLS;

import wainscribe.model.StoredOffcut;
import wainscribe.model.length.LengthFormat;
import wainscribe.model.length.LengthUnit;
import wainscribe.profile.ProfileCatalogue;
import wainscribe.profile.TrimProfile;
import wainscribe.takeoff.cutting.BuyLine;
import wainscribe.takeoff.cutting.HomePlan;
import wainscribe.takeoff.cutting.PlannedBar;
import wainscribe.takeoff.cutting.PlannedPiece;
import wainscribe.takeoff.cutting.StockKind;

/**
 * Says what a cutting plan holds, as the designer reads it.
 *
 * @param profiles names of profiles
 * @param unit     unit of the home
 * @param currency of its prices; empty if none is recorded
 */
record PlanWords(ProfileCatalogue profiles, LengthUnit unit, String currency) {

	private static final int CENTS = 2;
	private static final int MOST_NAMED = 4;

	/** Says what the plan costs and how much is proved of it. */
	String summary(String home, HomePlan plan, boolean working) {
		String cost = NLS.bind(Messages.PlanWords_Cost, plan.bars().size(), money(plan.cost()));
		if (plan.isCostProved()) {
			return NLS.bind(Messages.PlanWords_Proved, home, cost);
		}
		if (plan.unplaced().isEmpty() && plan.cost().signum() > 0 && plan.cost().compareTo(plan.lowerBound()) == 0) {
			return NLS.bind(Messages.PlanWords_ProvedPriced, home, cost);
		}
		String bound = money(plan.lowerBound().setScale(CENTS, RoundingMode.FLOOR));
		return NLS.bind(working ? Messages.PlanWords_Working : Messages.PlanWords_Best, new Object[] { home, cost, bound });
	}

	/** Says which offcuts are there; empty if there are none. */
	String offcuts(List<StoredOffcut> offcuts) {
		if (offcuts.isEmpty()) {
			return ""; //$NON-NLS-1$
		}
		String named = offcuts.stream().limit(MOST_NAMED).filter(offcut -> offcut.getLength() != null && offcut.getMaterial() != null)
				.map(offcut -> NLS.bind(Messages.PlanWords_Offcut, new Object[] { offcut.getName(),
						LengthFormat.asShown(offcut.getLength(), unit), of(new StockKind(offcut.getProfile(), offcut.getMaterial())) }))
				.collect(Collectors.joining("; ")); //$NON-NLS-1$
		int more = offcuts.size() - MOST_NAMED;
		return NLS.bind(Messages.PlanWords_Offcuts, more > 0 ? NLS.bind(Messages.PlanWords_MissingMore, named, more) : named);
	}

	/** Says what is missing or has no price. */
	List<String> remarks(HomePlan plan) {
		List<String> remarks = new ArrayList<>();
		if (!plan.unplaced().isEmpty()) {
			PlannedPiece first = plan.unplaced().getFirst();
			String named = NLS.bind(Messages.BarWords_Piece, new Object[] { first.room(), first.label(), length(first) });
			int more = plan.unplaced().size() - 1;
			remarks.add(NLS.bind(Messages.PlanWords_Missing, more == 0 ? named : NLS.bind(Messages.PlanWords_MissingMore, named, more)));
		}
		plan.unpriced().forEach(kind -> remarks.add(NLS.bind(Messages.PlanWords_Unpriced, of(kind))));
		return remarks;
	}

	/** Names what a bar is of. */
	String of(StockKind kind) {
		return NLS.bind(Messages.BarWords_Kind, profiles.find(kind.profile()).map(TrimProfile::name).orElse(kind.profile()),
				kind.material().getLiteral());
	}

	/** Says length and source of a bar. */
	String of(PlannedBar bar) {
		return NLS.bind(Messages.BarWords_Bar, new Object[] { bar.number(), LengthFormat.asShown(bar.length(), unit), source(bar) });
	}

	/** Says what is left of a bar. */
	String left(PlannedBar bar, HomePlan plan) {
		return NLS.bind(plan.isOffcut(bar.remainder()) ? Messages.BarWords_LeftKept : Messages.BarWords_Left,
				LengthFormat.asShown(bar.remainder(), unit));
	}

	/** Says where a piece goes and from which bar it comes. */
	String of(PlannedPiece piece, PlannedBar bar) {
		String where = piece.piece().map(cut -> cut.where()).orElse(Messages.BarWords_Gone);
		return NLS.bind(Messages.BarWords_PieceOn, new Object[] {
				NLS.bind(Messages.BarWords_Piece, new Object[] { piece.room(), piece.label(), length(piece) }), where, of(bar) });
	}

	/** Writes the length of a piece. */
	String length(PlannedPiece piece) {
		return LengthFormat.asTapeMark(piece.length(), unit);
	}

	/** Writes the length of what is bought. */
	String length(BuyLine line) {
		return LengthFormat.asShown(line.length(), unit);
	}

	/** Writes an amount with its currency. */
	String money(BigDecimal amount) {
		return currency.isEmpty() ? amount(amount) : amount(amount) + ' ' + currency;
	}

	/** Writes an amount without its currency, or that there is none. */
	String amount(BigDecimal amount) {
		return amount == null ? Messages.BuyTable_NoPrice : amount.setScale(CENTS, RoundingMode.HALF_UP).toPlainString();
	}

	private static String source(PlannedBar bar) {
		return bar.isBought() ? Messages.BarWords_Bought : NLS.bind(Messages.BarWords_Offcut, bar.label());
	}
}
