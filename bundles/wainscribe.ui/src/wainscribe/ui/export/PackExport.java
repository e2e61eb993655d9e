// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.export;

import static java.util.Objects.requireNonNull;

import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.nio.file.Path;
import java.util.List;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.OperationCanceledException;
import org.eclipse.core.runtime.SubMonitor;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.jface.operation.IRunnableWithProgress;

import wainscribe.model.Home;
import wainscribe.model.Room;
import wainscribe.report.ClientPack;
import wainscribe.report.DesignServices;
import wainscribe.report.PackContent;
import wainscribe.report.PackContents;
import wainscribe.report.PackProgress;

/** Writes a client pack beside the editing: from copies made when it was created, so the designer may go on. */
final class PackExport implements IRunnableWithProgress {

	private static final int WHOLE = 100;
	private static final int WORKING_OUT = 30;

	private final DesignServices services;
	private final Home home;
	private final List<Room> rooms;
	private final Path folder;
	private List<Path> written = List.of();

	PackExport(DesignServices services, Home home, List<Room> rooms, Path folder) {
		this.services = requireNonNull(services);
		this.home = EcoreUtil.copy(home);
		this.rooms = List.copyOf(EcoreUtil.copyAll(rooms));
		this.folder = requireNonNull(folder);
	}

	@Override
	public void run(IProgressMonitor monitor) throws InvocationTargetException, InterruptedException {
		SubMonitor progress = SubMonitor.convert(monitor, Messages.PackExport_Task, WHOLE);
		try {
			PackContent content = new PackContents(services).of(home, rooms, steps(progress.split(WORKING_OUT)));
			written = new ClientPack(services).write(content, folder, steps(progress.split(WHOLE - WORKING_OUT)));
		} catch (OperationCanceledException e) {
			InterruptedException stopped = new InterruptedException();
			stopped.initCause(e);
			throw stopped;
		} catch (IOException | IllegalArgumentException e) {
			throw new InvocationTargetException(e);
		}
	}

	/** Returns the files of the pack; empty before it was written. */
	List<Path> written() {
		return written;
	}

	private static PackProgress steps(SubMonitor monitor) {
		return new PackProgress() {

			private int before;

			@Override
			public void step(String what, int done, int total) {
				monitor.setWorkRemaining(Math.max(1, total - before));
				monitor.worked(done - before);
				before = done;
				monitor.subTask(what);
			}

			@Override
			public boolean isCancelled() {
				return monitor.isCanceled();
			}
		};
	}
}
