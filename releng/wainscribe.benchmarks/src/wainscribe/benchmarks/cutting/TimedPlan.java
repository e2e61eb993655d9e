// SPDX-License-Identifier: EPL-2.0
package wainscribe.benchmarks.cutting;

import java.lang.management.ManagementFactory;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.function.LongSupplier;

import wainscribe.cutting.CuttingJob;
import wainscribe.cutting.CuttingPlan;
import wainscribe.cutting.CuttingPlanner;
import wainscribe.cutting.PlanWatch;

/** A plan and when what became of it. */
final class TimedPlan {

	private record Step(long nanos, BigDecimal cost) {
	}

	private final LongSupplier clock;
	private final long start;
	private final List<Step> steps = new ArrayList<>();
	private final CuttingPlan plan;
	private final long nanos;
	private long costNanos = -1;

	/**
	 * Plans a job.
	 *
	 * @param job           the job
	 * @param seconds       most time
	 * @param untilCostOnly whether to stop as soon as the cost is proved
	 */
	TimedPlan(CuttingJob job, double seconds, boolean untilCostOnly) {
		this(job, seconds, untilCostOnly, System::nanoTime);
	}

	/** Plans a job by the processor time of this thread alone, so that other work on the machine does not count. */
	static TimedPlan ofProcessor(CuttingJob job, double seconds) {
		return new TimedPlan(job, seconds, true, ManagementFactory.getThreadMXBean()::getCurrentThreadCpuTime);
	}

	private TimedPlan(CuttingJob job, double seconds, boolean untilCostOnly, LongSupplier clock) {
		this.clock = clock;
		start = clock.getAsLong();
		long end = start + (long) (seconds * 1e9);
		plan = new CuttingPlanner().plan(job, new PlanWatch() {
			@Override
			public boolean stopped() {
				return untilCostOnly && costNanos >= 0 || clock.getAsLong() > end;
			}

			@Override
			public void improved(CuttingPlan best) {
				note(best);
			}
		});
		nanos = clock.getAsLong() - start;
	}

	private void note(CuttingPlan best) {
		steps.add(new Step(clock.getAsLong() - start, best.cost()));
		if (costNanos < 0 && best.isCostProved()) {
			costNanos = clock.getAsLong() - start;
		}
	}

	CuttingPlan plan() {
		return plan;
	}

	/** Returns the whole time. */
	long nanos() {
		return nanos;
	}

	/** Returns the time until the cost was proved least; the whole time if it was not. */
	long costNanos() {
		return costNanos < 0 ? nanos : costNanos;
	}

	/** Returns the time until there was a plan not above so many times the bound that was proved in the end; the whole time if none. */
	long nanosWithin(double factor) {
		double most = plan.lowerBound().doubleValue() * factor;
		return steps.stream().filter(step -> step.cost.doubleValue() <= most).mapToLong(Step::nanos).findFirst().orElse(nanos);
	}
}
