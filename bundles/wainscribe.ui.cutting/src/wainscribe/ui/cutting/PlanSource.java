// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.cutting;

import static java.util.Objects.requireNonNull;

import java.util.List;
import java.util.Optional;

import org.eclipse.swt.widgets.Display;

import wainscribe.fabrication.CutList;
import wainscribe.fabrication.CutLists;
import wainscribe.layout.RoomDesign;
import wainscribe.takeoff.cutting.CuttingDecisions;
import wainscribe.takeoff.cutting.HomeCuttingJob;
import wainscribe.takeoff.cutting.HomePlan;
import wainscribe.ui.session.HomeSession;
import wainscribe.ui.session.RoomSession;
import wainscribe.ui.session.RoomSessionListener;

/** The cutting plan of the home that is looked at; made anew a moment after each edit. To be used in the user interface thread. */
final class PlanSource implements RoomSessionListener {

	private static final int QUIET_MILLIS = 300;

	private final Display display;
	private final Runnable changed;
	private final Runnable restart = this::plan;
	private HomeSession home;
	private List<RoomSession> rooms = List.of();
	private PlanJob job;
	private HomePlan best;

	/**
	 * Creates a source without a home.
	 *
	 * @param display of the user interface
	 * @param changed told when there is another plan, or none
	 */
	PlanSource(Display display, Runnable changed) {
		this.display = requireNonNull(display);
		this.changed = requireNonNull(changed);
	}

	/** Follows another home; null for none. */
	void follow(HomeSession other) {
		List<RoomSession> others = other == null ? List.of() : other.rooms();
		if (other == home && others.equals(rooms)) {
			return;
		}
		rooms.forEach(room -> room.removeListener(this));
		home = other;
		rooms = others;
		rooms.forEach(room -> room.addListener(this));
		best = null;
		plan();
		changed.run();
	}

	/** Returns the home. */
	Optional<HomeSession> home() {
		return Optional.ofNullable(home);
	}

	/** Returns the best plan so far; empty before the first. */
	Optional<HomePlan> best() {
		return Optional.ofNullable(best);
	}

	/** Returns the session of a room. */
	Optional<RoomSession> room(String name) {
		return rooms.stream().filter(room -> name.equals(room.room().getName())).findFirst();
	}

	/** Tells whether a better plan may come. */
	boolean isPlanning() {
		return job != null;
	}

	/** Ends the planning with the best plan so far. */
	void stop() {
		if (job != null) {
			job.stop();
		}
	}

	@Override
	public void designChanged(RoomSession session) {
		display.timerExec(QUIET_MILLIS, restart);
	}

	@Override
	public void roomReplaced(RoomSession session) {
		display.timerExec(QUIET_MILLIS, restart);
	}

	private void plan() {
		if (job != null) {
			job.cancel();
			job = null;
		}
		if (home == null) {
			return;
		}
		CutLists cutLists = new CutLists(home.profiles());
		List<RoomDesign> designs = home.rooms().stream().map(RoomSession::design).toList();
		List<CutList> lists = designs.stream().map(cutLists::of).toList();
		PlanJob[] started = new PlanJob[1];
		started[0] = new PlanJob(String.valueOf(home.home().getName()),
				HomeCuttingJob.of(home.home(), designs, lists, CuttingDecisions.of(home.home())),
				(plan, last) -> display.asyncExec(() -> take(started[0], plan, last)));
		job = started[0];
		job.schedule();
		changed.run();
	}

	/** News of a job that was replaced meanwhile is stale. */
	private void take(PlanJob from, HomePlan plan, boolean last) {
		if (from != job) {
			return;
		}
		best = plan;
		job = last ? null : job;
		changed.run();
	}
}
