// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation;

import java.util.EventObject;

import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.draw2d.FigureCanvas;
import org.eclipse.gef.GraphicalViewer;
import org.eclipse.gef.commands.CommandStack;
import org.eclipse.gef.ui.actions.ActionRegistry;
import org.eclipse.gef.ui.parts.GraphicalEditor;
import org.eclipse.jface.dialogs.ErrorDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IEditorSite;
import org.eclipse.ui.IFileEditorInput;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.views.properties.IPropertySheetPage;

import wainscribe.ui.ElementSelector;
import wainscribe.ui.RoomEditors;
import wainscribe.ui.drafting.appearance.Appearance;
import wainscribe.ui.drafting.appearance.AppearanceWatch;
import wainscribe.ui.drafting.painting.Letters;
import wainscribe.ui.drafting.tools.TableEditDomain;
import wainscribe.ui.elevation.actions.TableActions;
import wainscribe.ui.elevation.actions.TableToolBar;
import wainscribe.ui.elevation.overview.OverviewBar;
import wainscribe.ui.elevation.history.RoomCommandStack;
import wainscribe.ui.elevation.table.DrawingTable;
import wainscribe.ui.elevation.table.TableListener;
import wainscribe.ui.elevation.table.TableZoom;
import wainscribe.ui.elevation.tools.WallWalk;
import wainscribe.ui.session.HomeSessions;
import wainscribe.ui.session.RoomSession;

/** Draws the walls of a room side by side, to be read, measured and changed by hand. */
public final class ElevationEditor extends GraphicalEditor implements TableListener {

	/** Id of the editor. */
	public static final String ID = RoomEditors.ELEVATION;

	private RoomSession session;
	private Letters letters;
	private DrawingTable table;
	private TableViewer viewer;

	@Override
	public void init(IEditorSite site, IEditorInput input) throws PartInitException {
		if (!(input instanceof IFileEditorInput file)) {
			throw new PartInitException(Messages.ElevationEditor_NoRoomFile);
		}
		try {
			session = site.getService(HomeSessions.class).openRoom(file.getFile());
		} catch (CoreException e) {
			throw new PartInitException(e.getStatus());
		}
		TableEditDomain domain = new TableEditDomain(this);
		domain.setCommandStack(new RoomCommandStack(session));
		setEditDomain(domain);
		super.init(site, input);
		nameAfterRoom();
	}

	@Override
	public void createPartControl(Composite parent) {
		letters = new Letters(parent.getDisplay());
		table = TableSetup.table(session, letters, Appearance.of(parent));
		viewer = new TableViewer((TableEditDomain) getEditDomain(), table);
		GridLayout rows = new GridLayout();
		rows.marginWidth = 0;
		rows.marginHeight = 0;
		rows.verticalSpacing = 0;
		parent.setLayout(rows);
		new TableToolBar((TableEditDomain) getEditDomain(), table, viewer.zoom(), viewer.walk()).createControl(parent)
				.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, false));
		Composite area = new Composite(parent, SWT.NONE);
		area.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
		createGraphicalViewer(area);
		TableLayout.apply(area, viewer, table, viewer.zoom());
		new OverviewBar(parent, table, (FigureCanvas) viewer.getControl());
		new QuietBar(parent, table);
		table.addListener(this);
		AppearanceWatch.follow(parent, getSite(), table::setAppearance);
		viewer.zoom().begin(FirstSize.of(parent, area));
		viewer.setContents(session.room());
		area.addListener(SWT.Resize, event -> fit(area));
	}

	/** As long as nobody has chosen a scale, the walls are drawn as large as they can be seen whole. */
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
		viewer.configure(getActionRegistry());
		getSite().registerContextMenu(viewer.getContextMenu(), viewer);
	}

	/** The room is put on the table once its size is known: everything on it is drawn to a scale. */
	@Override
	protected void initializeGraphicalViewer() {
		// see createPartControl
	}

	@Override
	@SuppressWarnings("unchecked")
	protected void createActions() {
		super.createActions();
		TableActions.create(this, getActionRegistry(), getSelectionActions());
	}

	/** The room was read anew: what was selected is gone. */
	@Override
	public void roomReplaced() {
		viewer.setContents(session.room());
		nameAfterRoom();
	}

	@Override
	public void drawingsChanged() {
		nameAfterRoom();
	}

	private void nameAfterRoom() {
		String name = session.room().getName() == null ? getEditorInput().getName() : session.room().getName();
		if (!name.equals(getPartName())) {
			setPartName(name);
		}
	}

	@Override
	public void commandStackChanged(EventObject event) {
		super.commandStackChanged(event);
		firePropertyChange(PROP_DIRTY);
	}

	@Override
	public boolean isDirty() {
		return session != null && session.isDirty();
	}

	@Override
	public void doSave(IProgressMonitor monitor) {
		try {
			session.save(monitor);
		} catch (CoreException e) {
			if (monitor != null) {
				monitor.setCanceled(true);
			}
			ErrorDialog.openError(getSite().getShell(), null, null, e.getStatus());
		}
	}

	@Override
	public Object getAdapter(@SuppressWarnings("rawtypes") Class key) {
		if (key == RoomSession.class) {
			return session;
		}
		if (key == ElementSelector.class) {
			return new ElementFinder(viewer, table, viewer.zoom());
		}
		if (key == TableZoom.class) {
			return viewer.zoom();
		}
		if (key == WallWalk.class) {
			return viewer.walk();
		}
		if (key == DrawingTable.class) {
			return table;
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
			super.dispose();
			getCommandStack().dispose();
			if (table != null) {
				table.dispose();
				letters.dispose();
			}
			getSite().getService(HomeSessions.class).close(session);
		}
	}
}
