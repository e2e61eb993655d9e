// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.cutting;

import static java.util.Objects.requireNonNull;

import java.util.function.BiConsumer;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.osgi.util.NLS;

import wainscribe.takeoff.cutting.HomeCuttingJob;
import wainscribe.takeoff.cutting.HomePlan;
import wainscribe.takeoff.cutting.HomePlanner;

/** Plans the cuts of a home beside the editing and tells of each better plan. */
final class PlanJob extends Job {

	private static final long LONGEST_NANOS = 60_000_000_000L;
	private static final long BETWEEN_NEWS_NANOS = 200_000_000L;

	private final HomeCuttingJob task;
	private final BiConsumer<HomePlan, Boolean> news;
	private volatile boolean enough;

	/**
	 * Creates a job.
	 *
	 * @param home name of the home
	 * @param task what to cut from what
	 * @param news takes the best plan so far and whether it is the last; called beside the user interface thread
	 */
	PlanJob(String home, HomeCuttingJob task, BiConsumer<HomePlan, Boolean> news) {
		super(NLS.bind(Messages.PlanJob_Name, home));
		this.task = requireNonNull(task);
		this.news = requireNonNull(news);
		setPriority(LONG);
	}

	/** Ends the planning with the best plan so far. */
	void stop() {
		enough = true;
	}

	@Override
	protected IStatus run(IProgressMonitor monitor) {
		long start = System.nanoTime();
		long[] told = { start - BETWEEN_NEWS_NANOS };
		HomePlan best = new HomePlanner().plan(task,
				() -> enough || monitor.isCanceled() || System.nanoTime() - start > LONGEST_NANOS, plan -> {
					if (System.nanoTime() - told[0] >= BETWEEN_NEWS_NANOS) {
						told[0] = System.nanoTime();
						news.accept(plan, false);
					}
				});
		if (monitor.isCanceled()) {
			return Status.CANCEL_STATUS;
		}
		news.accept(best, true);
		return Status.OK_STATUS;
	}
}
