// SPDX-License-Identifier: EPL-2.0
package wainscribe.cli.text;

import java.util.List;
import java.util.regex.Pattern;

import wainscribe.cutting.Bar;
import wainscribe.cutting.CuttingPlan;
import wainscribe.cutting.PieceDemand;
import wainscribe.cutting.PlacedPiece;

/** Keeps names from files in their line of a text, and their control characters away from the terminal. */
public final class SingleLine {

	private static final Pattern CONTROLS = Pattern.compile("[\\p{Cc}\\u2028\\u2029]+"); //$NON-NLS-1$
	private static final Pattern CONTROLS_IN_LINES = Pattern.compile("[\\p{Cc}\\u2028\\u2029&&[^\\n]]"); //$NON-NLS-1$

	private SingleLine() {
	}

	/** Returns the text as one line: line breaks and control characters are spaces. */
	public static String of(String text) {
		return CONTROLS.matcher(text).replaceAll(" ").strip(); //$NON-NLS-1$
	}

	/** Returns lines, in which control characters are spaces. */
	public static String eachOf(String lines) {
		return CONTROLS_IN_LINES.matcher(lines).replaceAll(" "); //$NON-NLS-1$
	}

	/** Returns the plan with each label and profile in one line. */
	public static CuttingPlan labels(CuttingPlan plan) {
		return new CuttingPlan(plan.bars().stream().map(SingleLine::labels).toList(), plan.cost(), plan.lowerBound(), plan.optimal(),
				plan.unplaced().stream().map(SingleLine::labels).toList());
	}

	private static Bar labels(Bar bar) {
		List<PlacedPiece> pieces = bar.pieces().stream().map(piece -> new PlacedPiece(of(piece.label()), piece.length())).toList();
		return new Bar(bar.source(), of(bar.label()), of(bar.profile()), bar.length(), bar.price(), pieces, bar.remainder());
	}

	private static PieceDemand labels(PieceDemand piece) {
		return new PieceDemand(of(piece.label()), of(piece.profile()), piece.length(), piece.quantity());
	}
}
