// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.treatment;

import java.util.Optional;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.core.runtime.Adapters;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExecutableExtension;
import org.eclipse.jface.wizard.IWizard;
import org.eclipse.jface.wizard.WizardDialog;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.ISources;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.handlers.HandlerUtil;
import org.eclipse.ui.part.FileEditorInput;

import wainscribe.model.Wall;
import wainscribe.ui.elevation.tools.WallWalk;
import wainscribe.ui.session.HomeSessions;
import wainscribe.ui.session.RoomSession;

/** Opens the wizard that copies a treatment to {@code rooms}, or frames placed by hand to {@code walls}. */
public final class TreatmentHandler extends AbstractHandler implements IExecutableExtension {

	private static final String WALLS = "walls"; //$NON-NLS-1$

	private boolean toWalls;

	@Override
	public void setInitializationData(IConfigurationElement config, String property, Object data) {
		toWalls = WALLS.equals(data);
	}

	/** Frames can be copied from a wall that has some. */
	@Override
	public void setEnabled(Object context) {
		Object editor = HandlerUtil.getVariable(context, ISources.ACTIVE_EDITOR_NAME);
		setBaseEnabled(editor instanceof IEditorPart part && wizard(part).isPresent());
	}

	@Override
	public Object execute(ExecutionEvent event) throws ExecutionException {
		IEditorPart editor = HandlerUtil.getActiveEditorChecked(event);
		Optional<IWizard> wizard = wizard(editor);
		wizard.ifPresent(made -> new WizardDialog(editor.getSite().getShell(), made).open());
		return null;
	}

	private Optional<IWizard> wizard(IEditorPart editor) {
		RoomSession session = Adapters.adapt(editor, RoomSession.class);
		WallWalk walk = Adapters.adapt(editor, WallWalk.class);
		if (session == null || walk == null) {
			return Optional.empty();
		}
		if (toWalls) {
			Optional<Wall> wall = walk.wall().filter(found -> !found.getPlacedFrames().isEmpty());
			return wall.map(found -> new CopyFramesWizard(session, found));
		}
		IWorkbenchPage page = editor.getSite().getPage();
		return Optional.of(new CopyTreatmentWizard(session, new TreatmentCopy(editor.getSite().getService(HomeSessions.class),
				file -> page.findEditor(new FileEditorInput(file)) != null)));
	}
}
