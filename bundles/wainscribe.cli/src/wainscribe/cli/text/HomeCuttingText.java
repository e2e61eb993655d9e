// SPDX-License-Identifier: EPL-2.0
package wainscribe.cli.text;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

import wainscribe.model.length.Length;
import wainscribe.model.length.LengthFormat;
import wainscribe.model.length.LengthUnit;
import wainscribe.takeoff.cutting.BuyLine;
import wainscribe.takeoff.cutting.HomePlan;
import wainscribe.takeoff.cutting.PlannedBar;
import wainscribe.takeoff.cutting.PlannedPiece;
import wainscribe.takeoff.cutting.StockKind;

/** The cutting plan of a home for people. */
public final class HomeCuttingText {

	private static final int CENTS = 2;

	private final StringBuilder text = new StringBuilder();
	private final LengthUnit unit;
	private final UnaryOperator<String> profileName;

	private HomeCuttingText(LengthUnit unit, UnaryOperator<String> profileName) {
		this.unit = unit;
		this.profileName = profileName;
	}

	/**
	 * Returns the text, ending in a line break.
	 *
	 * @param profileName finds the name of a profile by its id
	 */
	public static String of(HomePlan plan, LengthUnit unit, UnaryOperator<String> profileName) {
		HomeCuttingText writer = new HomeCuttingText(unit, profileName);
		writer.summary(plan);
		writer.unpriced(plan.unpriced());
		writer.missing(plan.unplaced());
		writer.buys(plan.buys());
		writer.cuts(plan);
		return writer.text.toString();
	}

	private void summary(HomePlan plan) {
		if (plan.bars().isEmpty()) {
			text.append(plan.unplaced().isEmpty() ? "Nothing left to cut" : "No piece can be cut").append('\n'); //$NON-NLS-1$ //$NON-NLS-2$
			accepted(plan);
			return;
		}
		long pieces = plan.bars().stream().mapToLong(bar -> bar.pieces().size()).sum();
		text.append(CuttingText.counted((int) pieces, "piece")).append(" from ") //$NON-NLS-1$ //$NON-NLS-2$
				.append(CuttingText.counted(plan.bars().size(), "bar")).append(" for ").append(money(plan.cost())); //$NON-NLS-1$ //$NON-NLS-2$
		if (plan.unplaced().isEmpty()) {
			text.append(CuttingText.proof(plan.isCostProved(), plan.optimal(), plan.lowerBound()));
		}
		text.append(", kerf ").append(length(plan.decisions().kerf())).append('\n'); //$NON-NLS-1$
		accepted(plan);
	}

	private void accepted(HomePlan plan) {
		if (!plan.accepted().isEmpty()) {
			text.append("Besides, ").append(CuttingText.counted(plan.accepted().size(), "bar")).append(" of accepted plans\n"); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
		}
	}

	private void unpriced(List<StockKind> kinds) {
		kinds.forEach(kind -> text.append("No price for every length of ").append(name(kind)) //$NON-NLS-1$
				.append(": planned by length, the fewest metres, and not in the cost\n")); //$NON-NLS-1$
	}

	private void missing(List<PlannedPiece> unplaced) {
		if (!unplaced.isEmpty()) {
			text.append("Missing: no length is known that holds\n"); //$NON-NLS-1$
			for (PlannedPiece piece : unplaced) {
				text.append("  ").append(where(piece)).append(' ').append(length(piece.length())) //$NON-NLS-1$
						.append(piece.piece().map(cut -> " of " + name(StockKind.of(cut))).orElse("")).append('\n'); //$NON-NLS-1$ //$NON-NLS-2$
			}
		}
	}

	private void buys(List<BuyLine> lines) {
		text.append(lines.isEmpty() ? "" : "Buy\n"); //$NON-NLS-1$ //$NON-NLS-2$
		for (BuyLine line : lines) {
			text.append("  ").append(line.count()).append(" x ").append(length(line.length())).append(" of ").append(name(line.kind())) //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
					.append(line.price() == null ? ", no price" : " at " + money(line.price()) + " = " + money(line.total())).append('\n'); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
		}
	}

	private void cuts(HomePlan plan) {
		text.append(plan.bars().isEmpty() ? "" : "Cut\n"); //$NON-NLS-1$ //$NON-NLS-2$
		for (PlannedBar bar : plan.bars()) {
			text.append("  ").append(bar.number()).append(". ").append(bar.isBought() ? "" : "offcut " + bar.label() + ' ') //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$ //$NON-NLS-4$
					.append(length(bar.length())).append(" of ").append(name(bar.kind())).append(": ") //$NON-NLS-1$ //$NON-NLS-2$
					.append(bar.pieces().stream().map(piece -> where(piece) + ' ' + length(piece.length())).collect(Collectors.joining(", "))) //$NON-NLS-1$
					.append("; left ").append(length(bar.remainder())) //$NON-NLS-1$
					.append(plan.isOffcut(bar.remainder()) ? ", worth keeping" : "").append('\n'); //$NON-NLS-1$ //$NON-NLS-2$
		}
	}

	private String name(StockKind kind) {
		return profileName.apply(kind.profile()) + ", " + kind.material().getLiteral(); //$NON-NLS-1$
	}

	private static String where(PlannedPiece piece) {
		return piece.room().isEmpty() ? piece.label() : piece.room() + ' ' + piece.label();
	}

	private String length(Length length) {
		return LengthFormat.asShown(length, unit);
	}

	private static String money(BigDecimal amount) {
		return amount.setScale(CENTS, RoundingMode.HALF_UP).toPlainString();
	}
}
