// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile;

import java.util.EventObject;
import java.util.List;

import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.emf.common.command.CommandStackListener;
import org.eclipse.gef.GraphicalViewer;
import org.eclipse.gef.commands.CommandStack;
import org.eclipse.gef.ui.actions.ActionRegistry;
import org.eclipse.gef.ui.parts.GraphicalEditor;
import org.eclipse.jface.dialogs.ErrorDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IEditorSite;
import org.eclipse.ui.IFileEditorInput;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.views.properties.IPropertySheetPage;

import wainscribe.ui.drafting.actions.SimpleAction;
import wainscribe.ui.drafting.appearance.Appearance;
import wainscribe.ui.drafting.appearance.AppearanceWatch;
import wainscribe.ui.drafting.history.ModelCommandStack;
import wainscribe.ui.drafting.painting.Letters;
import wainscribe.ui.drafting.tools.TableEditDomain;
import wainscribe.ui.profile.actions.DeleteNodesAction;
import wainscribe.ui.profile.actions.SectionToolBar;
import wainscribe.ui.profile.desk.DeskZoom;
import wainscribe.ui.profile.desk.ProfileDesk;
import wainscribe.ui.profile.files.OpenProfile;
import wainscribe.ui.profile.outlines.ImportOutline;
import wainscribe.ui.profile.properties.ProfileSheet;
import wainscribe.ui.profile.session.ProfileListener;
import wainscribe.ui.profile.session.ProfileSession;
import wainscribe.ui.profile.sheet.SaveSheet;
import wainscribe.ui.properties.SheetSubject;
import wainscribe.ui.session.HomeSessions;

/** Draws the section of a moulding, as large as one likes, with its numbers. */
public final class ProfileEditor extends GraphicalEditor implements ProfileListener {

	/** Id of the editor. */
	public static final String ID = "wainscribe.ui.profile.editor"; //$NON-NLS-1$

	private final CommandStackListener history = event -> historyChanged();
	private OpenProfile file;
	private ProfileSession session;
	private ModelCommandStack stack;
	private Letters letters;
	private ProfileDesk desk;
	private DeskViewer viewer;

	@Override
	public void init(IEditorSite site, IEditorInput input) throws PartInitException {
		if (!(input instanceof IFileEditorInput chosen)) {
			throw new PartInitException(Messages.ProfileEditor_NoProfileFile);
		}
		try {
			file = OpenProfile.of(chosen.getFile(), site.getService(HomeSessions.class));
			session = file.session();
		} catch (CoreException e) {
			throw new PartInitException(e.getStatus());
		}
		TableEditDomain domain = new TableEditDomain(this);
		stack = new ModelCommandStack(session::history, session::isDirty);
		domain.setCommandStack(stack);
		setEditDomain(domain);
		super.init(site, input);
		session.history().addCommandStackListener(history);
		session.addListener(this);
		profileChanged();
	}

	@Override
	public void createPartControl(Composite parent) {
		letters = new Letters(parent.getDisplay());
		desk = new ProfileDesk(session, letters, Appearance.of(parent));
		TableEditDomain domain = (TableEditDomain) getEditDomain();
		viewer = new DeskViewer(domain, desk);
		GridLayout rows = new GridLayout();
		rows.marginWidth = 0;
		rows.marginHeight = 0;
		rows.verticalSpacing = 0;
		parent.setLayout(rows);
		Composite tools = new Composite(parent, SWT.NONE);
		tools.setLayout(new FillLayout());
		tools.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, false));
		Composite area = new Composite(parent, SWT.NONE);
		area.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
		createGraphicalViewer(area);
		new SectionToolBar(domain, viewer, desk, viewer.zoom(), viewer.steps()).createControl(tools, fileActions());
		DeskLayout.apply(area, viewer, desk);
		new NumbersBar(parent, desk);
		AppearanceWatch.follow(parent, getSite(), desk::setAppearance);
		area.addListener(SWT.Resize, event -> fit(area));
	}

	private List<SimpleAction> fileActions() {
		return List.of(
				new SimpleAction(Messages.ImportOutline_Name, ProfileIcon.OUTLINE.descriptor(),
						() -> new ImportOutline(getSite().getShell(), session).run()),
				new SimpleAction(Messages.SaveSheet_Name, ProfileIcon.SHEET.descriptor(),
						() -> new SaveSheet(getSite().getShell(), session).run()));
	}

	/** As long as nobody has chosen a scale, the section is drawn as large as it can be seen whole. */
	private void fit(Composite area) {
		area.getDisplay().asyncExec(() -> {
			if (!area.isDisposed()) {
				viewer.zoom().follow();
			}
		});
	}

	@Override
	protected void createGraphicalViewer(Composite parent) {
		viewer.createControl(parent);
		setGraphicalViewer(viewer);
		configureGraphicalViewer();
		hookGraphicalViewer();
		initializeGraphicalViewer();
	}

	@Override
	protected void configureGraphicalViewer() {
		super.configureGraphicalViewer();
		viewer.configure();
		getActionRegistry().registerAction(new DeleteNodesAction(viewer.steps()));
		getSite().registerContextMenu(viewer.getContextMenu(), viewer);
	}

	@Override
	protected void initializeGraphicalViewer() {
		viewer.setContents(session);
	}

	private void historyChanged() {
		stack.changed();
		firePropertyChange(PROP_DIRTY);
	}

	@Override
	public void commandStackChanged(EventObject event) {
		super.commandStackChanged(event);
		firePropertyChange(PROP_DIRTY);
	}

	@Override
	public void profileChanged() {
		String name = session.draft().data().name();
		if (!name.equals(getPartName())) {
			setPartName(name);
		}
		firePropertyChange(PROP_DIRTY);
	}

	@Override
	public boolean isDirty() {
		return session != null && session.isDirty();
	}

	@Override
	public void doSave(IProgressMonitor monitor) {
		try {
			file.save(monitor);
		} catch (CoreException e) {
			if (monitor != null) {
				monitor.setCanceled(true);
			}
			ErrorDialog.openError(getSite().getShell(), null, null, e.getStatus());
		}
	}

	@Override
	public Object getAdapter(@SuppressWarnings("rawtypes") Class key) {
		if (key == ProfileSession.class) {
			return session;
		}
		if (key == SheetSubject.class) {
			return new ProfileSheet(session);
		}
		if (key == DeskZoom.class) {
			return viewer.zoom();
		}
		if (key == ProfileDesk.class) {
			return desk;
		}
		return key == IPropertySheetPage.class ? null : super.getAdapter(key);
	}

	/** Returns the viewer; null before the editor has a control. */
	@Override
	public GraphicalViewer getGraphicalViewer() {
		return super.getGraphicalViewer();
	}

	@Override
	public ActionRegistry getActionRegistry() {
		return super.getActionRegistry();
	}

	@Override
	public CommandStack getCommandStack() {
		return super.getCommandStack();
	}

	@Override
	public void dispose() {
		if (session != null) {
			session.history().removeCommandStackListener(history);
			session.removeListener(this);
			super.dispose();
			if (desk != null) {
				desk.dispose();
				letters.dispose();
			}
			file.close();
		}
	}
}
