// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation;

import org.eclipse.draw2d.IFigure;
import org.eclipse.gef.editparts.FreeformGraphicalRootEditPart;
import org.eclipse.gef.ui.actions.ActionRegistry;
import org.eclipse.gef.ui.parts.ScrollingGraphicalViewer;

import wainscribe.ui.drafting.appearance.Appearance;
import wainscribe.ui.drafting.tools.TableEditDomain;
import wainscribe.ui.elevation.actions.TableContextMenu;
import wainscribe.ui.elevation.editparts.TableEditPartFactory;
import wainscribe.ui.elevation.ghost.GhostView;
import wainscribe.ui.elevation.table.DrawingTable;
import wainscribe.ui.elevation.table.TableListener;
import wainscribe.ui.elevation.table.TableZoom;
import wainscribe.ui.elevation.tools.ScrollWheel;
import wainscribe.ui.elevation.tools.TableKeys;
import wainscribe.ui.elevation.tools.TableSelectionTool;
import wainscribe.ui.elevation.tools.WallWalk;

/** The viewer of a drawing table with its tools, keyboard and wheel. Scale and place are the table's, not the viewer's. */
final class TableViewer extends ScrollingGraphicalViewer implements TableListener {

	private final DrawingTable table;
	private final TableEditDomain domain;
	private final TableZoom zoom;
	private final WallWalk walk;

	TableViewer(TableEditDomain domain, DrawingTable table) {
		this.domain = domain;
		this.table = table;
		zoom = new TableZoom(this, table);
		walk = new WallWalk(this, table, zoom);
		domain.setDefaultTool(new TableSelectionTool(walk));
		domain.loadDefaultTool();
	}

	/** Only what changed is asked for, part by part. */
	@Override
	protected void hookControl() {
		getLightweightSystem().setUpdateManager(new PatchUpdates(getControl()));
		super.hookControl();
	}

	TableZoom zoom() {
		return zoom;
	}

	WallWalk walk() {
		return walk;
	}

	/** Makes the viewer ready to show a room; its control exists. */
	void configure(ActionRegistry actions) {
		setRootEditPart(new FreeformGraphicalRootEditPart());
		setEditPartFactory(new TableEditPartFactory(table));
		setKeyHandler(new TableKeys(this, table, zoom, walk));
		new ScrollWheel(zoom).attachTo(this);
		setContextMenu(new TableContextMenu(this, actions, table, zoom, walk));
		domain.addViewer(this);
		table.addListener(this);
		GhostView.attach(this, table, walk);
		drawingsChanged();
	}

	/** The ground is painted by the root figure: a theme has its say on the canvas only. */
	@Override
	public void drawingsChanged() {
		IFigure root = ((FreeformGraphicalRootEditPart) getRootEditPart()).getFigure();
		root.setOpaque(true);
		root.setBackgroundColor(Appearance.colour(table.colours().drawing().ground()));
		getControl().setBackground(Appearance.colour(table.colours().drawing().ground()));
	}
}
