// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui;

import org.eclipse.core.commands.common.CommandException;
import org.eclipse.core.runtime.ILog;
import org.eclipse.ui.handlers.IHandlerService;
import org.eclipse.ui.services.IServiceLocator;

/** Ids of the commands of this bundle. */
public final class Commands {

	/** Makes a new home. */
	public static final String NEW_HOME = "wainscribe.ui.newHome"; //$NON-NLS-1$
	/** Makes a home that lies in a folder somewhere known to the workspace. */
	public static final String OPEN_HOME = "wainscribe.ui.openHome"; //$NON-NLS-1$
	/** Reads a survey into a home. */
	public static final String ADD_ROOMS = "wainscribe.ui.addRooms"; //$NON-NLS-1$
	/** Writes the client pack. */
	public static final String EXPORT_PACK = "wainscribe.ui.exportPack"; //$NON-NLS-1$

	private Commands() {
	}

	/** Runs a command; one that fails is logged. */
	public static void run(String command, IServiceLocator site) {
		try {
			site.getService(IHandlerService.class).executeCommand(command, null);
		} catch (CommandException e) {
			ILog.get().error(e.getLocalizedMessage(), e);
		}
	}
}
