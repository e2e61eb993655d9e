// SPDX-License-Identifier: EPL-2.0
package wainscribe.cli;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Objects;
import java.util.function.BooleanSupplier;
import java.util.function.LongSupplier;

import wainscribe.cutting.CuttingPlan;
import wainscribe.cutting.PlanWatch;

/** Shows on the console how a cutting plan gets better, and ends the planning when its time is over or the user wishes it. */
final class PlanProgress implements PlanWatch {

	private static final long NANOS_PER_SECOND = 1_000_000_000L;
	private static final long BETWEEN_LINES = NANOS_PER_SECOND / 2;
	private static final int CENTS = 2;

	private final Console console;
	private final BooleanSupplier endWished;
	private final LongSupplier clock;
	private final long start;
	private final long time;
	private String said = ""; //$NON-NLS-1$
	private long saidAt;

	/**
	 * Starts the clock.
	 *
	 * @param console   takes the lines
	 * @param seconds   how long the planning may take
	 * @param endWished tells whether the user wants it to end
	 * @param clock     nanoseconds
	 */
	PlanProgress(Console console, BigDecimal seconds, BooleanSupplier endWished, LongSupplier clock) {
		this.console = Objects.requireNonNull(console);
		this.endWished = Objects.requireNonNull(endWished);
		this.clock = Objects.requireNonNull(clock);
		time = seconds.multiply(BigDecimal.valueOf(NANOS_PER_SECOND)).longValue();
		start = clock.getAsLong();
	}

	@Override
	public boolean stopped() {
		return endWished.getAsBoolean() || clock.getAsLong() - start >= time;
	}

	@Override
	public void improved(CuttingPlan best) {
		tell(best.cost(), best.lowerBound(), best.bars().size());
	}

	/** Says how good the best plan is, if that is news and the last line is not fresh. */
	void tell(BigDecimal cost, BigDecimal lowerBound, int bars) {
		String line = bars + (bars == 1 ? " bar, cost " : " bars, cost ") + cost.setScale(CENTS, RoundingMode.HALF_UP) //$NON-NLS-1$ //$NON-NLS-2$
				+ ", no plan below " + lowerBound.min(cost).setScale(CENTS, RoundingMode.FLOOR); //$NON-NLS-1$
		long now = clock.getAsLong();
		if (!line.equals(said) && (said.isEmpty() || now - saidAt >= BETWEEN_LINES)) {
			console.progress("planning: " + line); //$NON-NLS-1$
			said = line;
			saidAt = now;
		}
	}
}
