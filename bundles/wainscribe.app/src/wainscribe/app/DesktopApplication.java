// SPDX-License-Identifier: EPL-2.0
package wainscribe.app;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

import org.eclipse.core.runtime.Platform;
import org.eclipse.equinox.app.IApplication;
import org.eclipse.equinox.app.IApplicationContext;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.osgi.service.datalocation.Location;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.PlatformUI;
import wainscribe.app.home.HomeArguments;

/**
 * Opens the drawing table on one workspace folder and keeps it until the last window closes.
 *
 * <p>Program arguments: {@code --home DIR} (any number) makes the home in that folder known to the workspace first.
 */
public final class DesktopApplication implements IApplication {

	@Override
	public Object start(IApplicationContext context) {
		Display display = PlatformUI.createDisplay();
		try {
			Location folder = Platform.getInstanceLocation();
			if (!claim(folder, display)) {
				return EXIT_OK;
			}
			String[] arguments = (String[]) context.getArguments().get(IApplicationContext.APPLICATION_ARGS);
			List<Path> homes = HomeArguments.read(List.of(arguments));
			int code = PlatformUI.createAndRunWorkbench(display, new DesktopWorkbenchAdvisor(homes));
			return code == PlatformUI.RETURN_RESTART ? EXIT_RESTART : EXIT_OK;
		} finally {
			display.dispose();
		}
	}

	@Override
	public void stop() {
		if (!PlatformUI.isWorkbenchRunning()) {
			return;
		}
		Display display = PlatformUI.getWorkbench().getDisplay();
		display.syncExec(() -> {
			if (!display.isDisposed()) {
				PlatformUI.getWorkbench().close();
			}
		});
	}

	/** Two windows that write the same folder would lose each other's work, so the second one is turned away. */
	private static boolean claim(Location folder, Display display) {
		try {
			if (folder.isLocked() || !folder.lock()) {
				tell(display, NLS.bind(Messages.DesktopApplication_FolderInUse, folder.getURL().getPath()));
				return false;
			}
			return true;
		} catch (IOException e) {
			tell(display, NLS.bind(Messages.DesktopApplication_FolderUnusable, folder.getURL().getPath(), e.getLocalizedMessage()));
			return false;
		}
	}

	private static void tell(Display display, String message) {
		MessageDialog.openError(display.getActiveShell(), Messages.DesktopApplication_Title, message);
	}
}
