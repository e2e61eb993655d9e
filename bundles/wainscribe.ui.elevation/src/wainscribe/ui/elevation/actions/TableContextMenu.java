// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.actions;

import org.eclipse.gef.ContextMenuProvider;
import org.eclipse.gef.EditPartViewer;
import org.eclipse.gef.GraphicalEditPart;
import org.eclipse.gef.GraphicalViewer;
import org.eclipse.gef.ui.actions.ActionRegistry;
import org.eclipse.jface.action.IAction;
import org.eclipse.jface.action.IMenuManager;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.action.Separator;
import org.eclipse.ui.actions.ActionFactory;

import wainscribe.ui.drafting.actions.SimpleAction;
import wainscribe.ui.elevation.Messages;
import wainscribe.ui.elevation.TableIcon;
import wainscribe.ui.elevation.directedit.DimensionEdit;
import wainscribe.ui.elevation.editparts.FrameEditPart;
import wainscribe.ui.elevation.editparts.RailEditPart;
import wainscribe.ui.elevation.editparts.ThingEditPart;
import wainscribe.ui.elevation.lining.Lining;
import wainscribe.ui.elevation.lining.LiningMenu;
import wainscribe.ui.elevation.table.DrawingTable;
import wainscribe.ui.elevation.table.TableZoom;
import wainscribe.ui.elevation.tools.WallWalk;

/** What can be done with what is under the pointer. Holds only what can be done now. */
public final class TableContextMenu extends ContextMenuProvider {

	/** Id of the action that locks frames. */
	public static final String LOCK = "wainscribe.ui.elevation.lock"; //$NON-NLS-1$
	/** Id of the action that lets the room decide again. */
	public static final String RELEASE = "wainscribe.ui.elevation.release"; //$NON-NLS-1$

	private final ActionRegistry actions;
	private final DrawingTable table;
	private final TableZoom zoom;
	private final WallWalk walk;

	/** Creates the menu of a viewer. */
	public TableContextMenu(EditPartViewer viewer, ActionRegistry actions, DrawingTable table, TableZoom zoom, WallWalk walk) {
		super(viewer);
		this.actions = actions;
		this.table = table;
		this.zoom = zoom;
		this.walk = walk;
	}

	@Override
	public void buildContextMenu(IMenuManager menu) {
		addEnabled(menu, ActionFactory.UNDO.getId());
		addEnabled(menu, ActionFactory.REDO.getId());
		menu.add(new Separator());
		if (getViewer().getFocusEditPart() instanceof ThingEditPart thing) {
			DimensionEdit.of(thing).ifPresent(number -> menu.add(new SimpleAction(Messages.TableContextMenu_TypeNumber, null, number::open)));
		}
		if (getViewer().getFocusEditPart() instanceof FrameEditPart || getViewer().getFocusEditPart() instanceof RailEditPart) {
			GraphicalEditPart part = (GraphicalEditPart) getViewer().getFocusEditPart();
			menu.add(new SimpleAction(Messages.TableContextMenu_Gap, null, () -> DimensionEdit.gap(part, table).open()));
		}
		addEnabled(menu, LOCK);
		addEnabled(menu, RELEASE);
		TakeDown takeDown = new TakeDown((GraphicalViewer) getViewer());
		takeDown.step().ifPresent(
				step -> menu.add(new SimpleAction(step.getLabel(), TableIcon.TAKE_DOWN.descriptor(), takeDown::run)));
		LiningMenu.addTo(menu, new Lining((GraphicalViewer) getViewer(), table));
		menu.add(new Separator());
		addEnabled(menu, ActionFactory.DELETE.getId());
		menu.add(new Separator());
		walk.wall().ifPresent(wall -> menu.add(
				new SimpleAction(Messages.TableContextMenu_FitWall, TableIcon.FIT_WALL.descriptor(), () -> zoom.fitWall(wall))));
		menu.add(new SimpleAction(Messages.TableContextMenu_FitRoom, TableIcon.FIT_ROOM.descriptor(), zoom::fitRoom));
		MenuManager layers = new MenuManager(Messages.TableContextMenu_Layers, TableIcon.LAYERS.descriptor(), null);
		ShowMenu.fill(layers, table);
		menu.add(layers);
	}

	private void addEnabled(IMenuManager menu, String id) {
		IAction action = actions.getAction(id);
		if (action != null && action.isEnabled()) {
			menu.add(action);
		}
	}
}
