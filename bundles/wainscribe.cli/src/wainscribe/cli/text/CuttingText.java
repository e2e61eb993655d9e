// SPDX-License-Identifier: EPL-2.0
package wainscribe.cli.text;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

import wainscribe.cutting.Bar;
import wainscribe.cutting.BarSource;
import wainscribe.cutting.CuttingPlan;
import wainscribe.cutting.PieceDemand;
import wainscribe.cutting.PlacedPiece;
import wainscribe.model.length.Length;
import wainscribe.model.length.LengthFormat;
import wainscribe.model.length.LengthUnit;

/** A cutting plan of files for people: what it costs, what to buy, which piece from which length, what is missing. */
public final class CuttingText {

	private static final int CENTS = 2;

	private final StringBuilder text = new StringBuilder();
	private final LengthUnit unit;

	/** What is bought alike. */
	private record Bought(String profile, Length length, BigDecimal price) {
	}

	private CuttingText(LengthUnit unit) {
		this.unit = unit;
	}

	/** Returns the text, ending in a line break. */
	public static String of(CuttingPlan plan, LengthUnit unit) {
		CuttingText writer = new CuttingText(unit);
		writer.summary(plan);
		writer.missing(plan.unplaced());
		writer.buys(plan.bars());
		writer.cuts(plan.bars());
		return writer.text.toString();
	}

	private void summary(CuttingPlan plan) {
		text.append(counted(plan.bars().size(), "bar")).append(" for ").append(money(plan.cost())); //$NON-NLS-1$ //$NON-NLS-2$
		if (plan.unplaced().isEmpty()) {
			text.append(proof(plan.isCostProved(), plan.optimal(), plan.lowerBound()));
		}
		text.append('\n');
	}

	/** Says how much is proved of a plan. */
	static String proof(boolean costProved, boolean optimal, BigDecimal lowerBound) {
		if (optimal) {
			return ", proved: no plan costs less, and none of this cost leaves a longer piece over"; //$NON-NLS-1$
		}
		return costProved ? ", proved: no plan costs less" //$NON-NLS-1$
				: ", the best found; no plan can cost less than " + lowerBound.setScale(CENTS, RoundingMode.FLOOR).toPlainString(); //$NON-NLS-1$
	}

	private void missing(List<PieceDemand> unplaced) {
		if (!unplaced.isEmpty()) {
			text.append("Missing: there is not enough stock for\n"); //$NON-NLS-1$
			for (PieceDemand piece : unplaced) {
				text.append("  ").append(piece.quantity()).append(" x ").append(name(piece.label())).append(length(piece.length())) //$NON-NLS-1$ //$NON-NLS-2$
						.append(" of ").append(piece.profile()).append('\n'); //$NON-NLS-1$
			}
		}
	}

	private void buys(List<Bar> bars) {
		Map<Bought, Integer> counts = new LinkedHashMap<>();
		bars.stream().filter(bar -> bar.source() == BarSource.STOCK)
				.forEach(bar -> counts.merge(new Bought(bar.profile(), bar.length(), bar.price()), 1, Integer::sum));
		if (!counts.isEmpty()) {
			text.append("Buy\n"); //$NON-NLS-1$
			counts.forEach((what, count) -> text.append("  ").append(count).append(" x ").append(length(what.length())).append(" of ") //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
					.append(what.profile()).append(" at ").append(money(what.price())).append(" = ") //$NON-NLS-1$ //$NON-NLS-2$
					.append(money(what.price().multiply(BigDecimal.valueOf(count)))).append('\n'));
		}
	}

	/** Bars that are cut alike stand in one line. */
	private void cuts(List<Bar> bars) {
		if (!bars.isEmpty()) {
			text.append("Cut\n"); //$NON-NLS-1$
		}
		Map<Bar, Integer> alike = new LinkedHashMap<>();
		bars.forEach(bar -> alike.merge(bar, 1, Integer::sum));
		alike.forEach((bar, count) -> {
			text.append("  ").append(count == 1 ? "" : count + " x "); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
			text.append(bar.source() == BarSource.OFFCUT ? "offcut " + name(bar.label()) : "").append(length(bar.length())) //$NON-NLS-1$ //$NON-NLS-2$
					.append(" of ").append(bar.profile()).append(": ").append(pieces(bar.pieces())).append("; left ") //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
					.append(length(bar.remainder())).append('\n');
		});
	}

	private String pieces(List<PlacedPiece> pieces) {
		Map<PlacedPiece, Integer> alike = new LinkedHashMap<>();
		pieces.forEach(piece -> alike.merge(piece, 1, Integer::sum));
		List<String> words = new ArrayList<>();
		alike.forEach((piece, count) -> words.add((count == 1 ? "" : count + " x ") + name(piece.label()) + length(piece.length()))); //$NON-NLS-1$ //$NON-NLS-2$
		return words.stream().collect(Collectors.joining(", ")); //$NON-NLS-1$
	}

	private static String name(String label) {
		return label.isEmpty() ? "" : label + ' '; //$NON-NLS-1$
	}

	private String length(Length length) {
		return LengthFormat.asShown(length, unit);
	}

	static String counted(int count, String what) {
		return count + " " + what + (count == 1 ? "" : "s"); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
	}

	private static String money(BigDecimal amount) {
		return amount.setScale(CENTS, RoundingMode.HALF_UP).toPlainString();
	}
}
