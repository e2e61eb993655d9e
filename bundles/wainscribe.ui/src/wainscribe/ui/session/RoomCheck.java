// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.session;

import java.util.List;
import java.util.function.Consumer;
import java.util.function.Supplier;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Display;

import wainscribe.layout.RoomDesign;
import wainscribe.model.Home;
import wainscribe.model.Room;
import wainscribe.rules.Finding;

/**
 * Checks a room beside the editing. Works on a copy, so that the designer goes on while the rules look; only the result of
 * the last state is told.
 */
final class RoomCheck {

	/** Long enough to let a drag or a word end, short enough to feel at once. */
	private static final int PAUSE_MILLISECONDS = 300;

	private final Supplier<RoomStudy> study;
	private final Display display;
	private final Consumer<Result> listener;
	private Runnable waiting;
	private Job running;

	/**
	 * Creates a check.
	 *
	 * @param study    derives and checks
	 * @param display  in whose thread results are told
	 * @param listener takes the result of the last state
	 */
	RoomCheck(Supplier<RoomStudy> study, Display display, Consumer<Result> listener) {
		this.study = study;
		this.display = display;
		this.listener = listener;
	}

	/** Checks after a pause; another call in between starts the pause anew. */
	void soon(Home home, Room room) {
		cancel();
		waiting = () -> now(home, room);
		display.timerExec(PAUSE_MILLISECONDS, waiting);
	}

	/** Checks at once. */
	void now(Home home, Room room) {
		cancel();
		Home homeCopy = copy(home);
		Room roomCopy = copy(room);
		running = new CheckJob(homeCopy, roomCopy);
		running.setSystem(true);
		running.schedule();
	}

	/** Gives up what waits or runs; nothing is told of it any more. */
	void cancel() {
		if (waiting != null && !display.isDisposed()) {
			display.timerExec(-1, waiting);
		}
		waiting = null;
		if (running != null) {
			running.cancel();
			running = null;
		}
	}

	private static <T extends EObject> T copy(T original) {
		return EcoreUtil.copy(original);
	}

	private void told(Job job, Result result) {
		if (job == running) {
			running = null;
			listener.accept(result);
		}
	}

	/**
	 * What came out of a check.
	 *
	 * @param frames   number of frames in the room
	 * @param findings the heaviest first
	 */
	record Result(int frames, List<Finding> findings) {

		/** Copies the list. */
		Result {
			findings = List.copyOf(findings);
		}
	}

	/** Looks at one state of a room. */
	private final class CheckJob extends Job {

		private final Home home;
		private final Room room;
		private final RoomStudy now = study.get();

		CheckJob(Home home, Room room) {
			super(NLS.bind(Messages.RoomCheck_Job, room.getName()));
			this.home = home;
			this.room = room;
		}

		@Override
		protected IStatus run(IProgressMonitor monitor) {
			RoomDesign design = now.adviseOn(home, room);
			Result result = new Result((int) design.layout().frames().count(), now.findings(design, monitor::isCanceled));
			if (monitor.isCanceled() || display.isDisposed()) {
				return Status.CANCEL_STATUS;
			}
			display.asyncExec(() -> told(this, result));
			return Status.OK_STATUS;
		}
	}
}
