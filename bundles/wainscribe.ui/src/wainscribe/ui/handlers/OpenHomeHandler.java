// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.handlers;

import java.nio.file.Path;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.DirectoryDialog;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.handlers.HandlerUtil;

import wainscribe.ui.session.HomeProjects;

/** Asks for the folder of a home and makes it known to the workspace. */
public final class OpenHomeHandler extends AbstractHandler {

	@Override
	public Object execute(ExecutionEvent event) throws ExecutionException {
		Shell shell = HandlerUtil.getActiveShellChecked(event);
		DirectoryDialog dialog = new DirectoryDialog(shell, SWT.OPEN);
		dialog.setText(Messages.OpenHomeHandler_Title);
		dialog.setMessage(Messages.OpenHomeHandler_Message);
		String folder = dialog.open();
		if (folder != null) {
			try {
				new HomeProjects(ResourcesPlugin.getWorkspace()).adopt(Path.of(folder), null);
			} catch (CoreException e) {
				MessageDialog.openInformation(shell, Messages.OpenHomeHandler_Title, e.getStatus().getMessage());
			}
		}
		return null;
	}
}
